package padwright.views.layout;

import java.util.ArrayList;
import java.util.List;

import padwright.drawing.font.DejaVuMetrics;
import padwright.drawing.scene.Anchor;
import padwright.drawing.scene.Drawn;
import padwright.drawing.scene.Element;
import padwright.drawing.scene.Face;
import padwright.drawing.scene.Line;
import padwright.drawing.scene.Rectangle;
import padwright.drawing.scene.Stroke;
import padwright.drawing.scene.Style;
import padwright.drawing.scene.Text;
import padwright.views.Figures;
import padwright.views.Messages;
import padwright.views.Palette;

/** The tube of the unrolled view, with a ruler along each joint and one around. */
record LayoutGround(LayoutPicture picture, Palette palette) {

	private static final double SIZE = 2.6;
	private static final double NAME = 3.2;
	private static final int TICK = 10;
	/** Steps that rulers are numbered by, the finest that can be read. */
	private static final List<Integer> NUMBERED = List.of(50, 100, 200, 500);
	private static final List<Integer> ANGLES = List.of(45, 90, 180);
	private static final double APART = 1.15;

	private static final DejaVuMetrics METRICS = new DejaVuMetrics();

	private double size() {
		return picture.letters(SIZE);
	}

	private LayoutGeometry geometry() {
		return picture.geometry();
	}

	List<Element> draw() {
		List<Element> elements = new ArrayList<>();
		picture.layout().joints().forEach(joint -> elements.addAll(joint(joint)));
		elements.addAll(around());
		if (geometry().unplaced() > 0) {
			elements.add(Text.of(Messages.of("layout.unplaced"), 2, geometry().trayTop(), Face.CONDENSED, size())
					.in(palette.quiet()));
		}
		return elements;
	}

	private List<Element> joint(LayoutJoint joint) {
		double from = geometry().x(joint.start());
		double length = Figures.mm(joint.length());
		List<Element> elements = new ArrayList<>();
		elements.add(new Drawn(new Rectangle(from, geometry().top(), length, geometry().bottom() - geometry().top()),
				Style.filled(palette.tint(palette.quiet(), 0.08))));
		Stroke edge = Stroke.of(palette.tint(palette.quiet(), 0.7), 0.3);
		elements.add(line(from, geometry().top(), from, geometry().bottom(), edge));
		elements.add(line(from + length, geometry().top(), from + length, geometry().bottom(), edge));
		elements.add(line(from, geometry().middle(), from + length, geometry().middle(),
				Stroke.of(palette.tint(palette.quiet(), 0.5), 0.2).dashed(4, 2)));
		double name = picture.letters(NAME);
		if (METRICS.width(joint.label(), Face.BOLD, name) < length) {
			elements.add(Text.of(joint.label(), from + 1, geometry().top() - 3.8 - size() * APART, Face.BOLD, name)
					.in(palette.quiet()));
		}
		int numbered = step(NUMBERED, METRICS.width("0000", Face.CONDENSED, size()));
		for (int mm = 0; mm <= length; mm += TICK) {
			elements.add(line(from + mm, geometry().top() - (mm % numbered == 0 ? 3 : 1.6), from + mm, geometry().top(),
					Stroke.of(palette.quiet(), 0.2)));
			if (mm % numbered == 0 && mm + Math.max(TICK, size()) < length) {
				elements.add(Text.of(String.valueOf(mm), from + mm, geometry().top() - 3.8, Face.CONDENSED, size())
						.anchored(Anchor.MIDDLE).in(palette.quiet()));
			}
		}
		return elements;
	}

	private List<Element> around() {
		List<Element> elements = new ArrayList<>();
		double degree = geometry().bore() * Math.PI / 360;
		for (int angle = -180; angle <= 180; angle += step(ANGLES, size() * APART / degree)) {
			double y = geometry().middle() + angle * degree;
			elements.add(line(geometry().x(0) - 2.5, y, geometry().x(0), y, Stroke.of(palette.quiet(), 0.2)));
			elements.add(Text.of(angle + "°", geometry().x(0) - 3.2, y + size() * 0.36, Face.CONDENSED, size())
					.anchored(Anchor.END).in(palette.quiet()));
		}
		return elements;
	}

	private static int step(List<Integer> steps, double least) {
		return steps.stream().filter(step -> step >= least).findFirst().orElse(steps.get(steps.size() - 1));
	}

	private static Element line(double x1, double y1, double x2, double y2, Stroke stroke) {
		return new Drawn(new Line(x1, y1, x2, y2), Style.stroked(stroke));
	}
}
