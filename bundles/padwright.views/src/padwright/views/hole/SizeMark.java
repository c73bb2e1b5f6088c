package padwright.views.hole;

import java.util.ArrayList;
import java.util.List;

import padwright.drawing.font.DejaVuMetrics;
import padwright.drawing.scene.Circle;
import padwright.drawing.scene.Drawn;
import padwright.drawing.scene.Element;
import padwright.drawing.scene.Face;
import padwright.drawing.scene.Group;
import padwright.drawing.scene.Ink;
import padwright.drawing.scene.Line;
import padwright.drawing.scene.Rectangle;
import padwright.drawing.scene.SolidFill;
import padwright.drawing.scene.Stroke;
import padwright.drawing.scene.Style;
import padwright.drawing.scene.Text;
import padwright.views.Figures;
import padwright.views.Messages;
import padwright.views.Palette;
import padwright.views.layout.LayoutOrigin;

/** One size of a section: a line between two ends with a knob to drag, its name and its figure. */
record SizeMark(HoleSection section, HoleSize size, boolean isDragged, Palette palette) {

	private static final double LETTERS = 1.75;
	private static final double KNOB = 0.55;
	private static final double PAST = 0.8;

	Group draw() {
		HoleMeasure measure = section.sizes().get(size);
		List<Element> elements = new ArrayList<>();
		double rim = -section.mm(HoleSize.CHIMNEY);
		double hole = section.mm(HoleSize.HOLE) / 2;
		double wide = Math.max(section.mm(HoleSize.CUP) / 2 + HoleFrame.METAL, hole + section.mm(HoleSize.RIM));
		double bore = section.mm(HoleSize.BORE) / 2;
		double floor = rim - section.mm(HoleSize.DEPTH);
		double top = HoleFrame.top(section);
		switch (size) {
		case BORE -> across(elements, -bore, bore, bore, bore);
		case HOLE -> across(elements, -hole, hole, Math.min(bore * 0.5, bore - 2.5), 0);
		case RIM -> rim(elements, hole + section.mm(HoleSize.RIM), rim / 2);
		case CHIMNEY -> up(elements, beside(wide), 0, rim, hole, section.hinge());
		case CUP -> across(elements, -section.mm(HoleSize.CUP) / 2, section.mm(HoleSize.CUP) / 2, top - 3, rim);
		case DEPTH -> up(elements, -section.hinge() * (wide + 3), rim, floor, wide, -section.hinge());
		case RISE -> up(elements, -section.hinge() * (wide + 15), rim, rim - section.mm(HoleSize.RISE), 0,
				-section.hinge());
		case ARM -> across(elements, 0, section.hinge() * section.mm(HoleSize.ARM), top - 7.5, floor);
		}
		return Group.named(size.id(), words(measure), elements);
	}

	/** For a screen reader, and over the size itself. */
	private String words(HoleMeasure measure) {
		String figure = measure.isKnown() ? Messages.of("hole.figure", size.inWords(), Figures.millimetres(measure.length()))
				: Messages.of("hole.unknown", size.inWords());
		return figure + ", " + measure.origin().inWords() + (measure.isEditable() ? "" : "\n" + Messages.of("hole.several"));
	}

	private Ink ink() {
		HoleMeasure measure = section.sizes().get(size);
		return isDragged ? palette.accent() : !measure.isKnown() ? palette.quiet() : switch (measure.origin()) {
		case OWN -> palette.ink();
		case CHANGED -> palette.solved();
		case INHERITED -> palette.quiet();
		};
	}

	private boolean isInherited() {
		return section.sizes().get(size).origin() == LayoutOrigin.INHERITED;
	}

	private Stroke thin() {
		return Stroke.of(palette.tint(ink(), 0.7), 0.14);
	}

	private Stroke line() {
		Stroke whole = Stroke.of(ink(), isDragged ? 0.35 : 0.22);
		return isInherited() && !isDragged ? whole.dashed(1.1, 0.5) : whole;
	}

	private Element line(double x1, double y1, double x2, double y2, Stroke stroke) {
		return new Drawn(new Line(x1, y1, x2, y2), Style.stroked(stroke));
	}

	private Element knob(double x, double y) {
		boolean isEditable = section.sizes().get(size).isEditable();
		return new Drawn(new Circle(x, y, KNOB), Style.of(new SolidFill(isEditable ? ink() : palette.ground()),
				Stroke.of(ink(), 0.2)));
	}

	/** Between two places beside each other, with a line from each to what it measures. */
	private void across(List<Element> elements, double from, double to, double y, double measured) {
		double past = y + (y < measured ? -PAST : PAST);
		elements.add(line(from, measured, from, past, thin()));
		elements.add(line(to, measured, to, past, thin()));
		elements.add(line(from, y, to, y, line()));
		elements.add(knob(to, y));
		if (size != HoleSize.ARM) {
			elements.add(knob(from, y));
		}
		text(elements, (from + to) / 2, y - 1.6, 0);
	}

	/** Between two places above each other. */
	private void up(List<Element> elements, double x, double from, double to, double measured, int side) {
		double past = x + side * PAST;
		double begin = side * measured;
		elements.add(line(begin, from, past, from, thin()));
		elements.add(line(begin, to, past, to, thin()));
		elements.add(line(x, from, x, to, line()));
		elements.add(knob(x, to));
		text(elements, x + side * 1.6, (from + to) / 2, side);
	}

	/** Beyond the rod, where there is one. */
	private double beside(double wide) {
		double rod = section.hasCup() ? section.mm(HoleSize.ARM) + CutHole.ROD + 1.5 : 0;
		return section.hinge() * Math.max(wide + 3, rod);
	}

	/** The rim is too narrow for words: they stand outside, away from the rod. */
	private void rim(List<Element> elements, double outside, double y) {
		int side = -section.hinge();
		elements.add(line(side * (outside + 4), y, side * (outside - section.mm(HoleSize.RIM)), y, line()));
		elements.add(knob(side * outside, y));
		text(elements, side * (outside + 5), y, side);
	}

	/** That of the cup stands on a plate, since the middle of the arm goes through it. */
	private void text(List<Element> elements, double x, double y, int side) {
		String words = shown();
		Face face = isDragged ? Face.BOLD : Face.CONDENSED;
		double width = new DejaVuMetrics().width(words, face, LETTERS);
		double left = side == 0 ? x - width / 2 : side < 0 ? x - width : x;
		if (size == HoleSize.CUP) {
			elements.add(new Drawn(new Rectangle(left - 0.3, y - LETTERS * 0.62, width + 0.6, LETTERS * 1.24),
					Style.filled(palette.ground())));
		}
		elements.add(Text.centred(words, left + width / 2, y, face, LETTERS).in(ink()));
	}

	private String shown() {
		HoleMeasure measure = section.sizes().get(size);
		return size.inWords() + " " + (measure.isKnown() ? Figures.millimetres(measure.length()) : "?");
	}
}
