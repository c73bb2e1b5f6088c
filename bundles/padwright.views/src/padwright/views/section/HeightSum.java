package padwright.views.section;

import java.util.ArrayList;
import java.util.List;

import padwright.drawing.scene.Anchor;
import padwright.drawing.scene.Circle;
import padwright.drawing.scene.Drawn;
import padwright.drawing.scene.Element;
import padwright.drawing.scene.Face;
import padwright.drawing.scene.Ink;
import padwright.drawing.scene.Line;
import padwright.drawing.scene.Style;
import padwright.drawing.scene.Text;
import padwright.engine.length.Length;
import padwright.views.Figures;
import padwright.views.Messages;
import padwright.views.Palette;
import padwright.workup.words.LengthWords;
import padwright.workup.words.RoughSum;

/** What the height equation says, as a sum, and how far the cup is from it on a scale of half thous. */
final class HeightSum {

	private static final double SIZE = 1.45;
	private static final double LINE = 2.35;
	private static final double WIDTH = 23;
	/** The scale reaches this far to either side, in half thous. */
	private static final int REACH = 6;

	private final CupSectionState state;
	private final Palette palette;
	private final List<Element> elements = new ArrayList<>();
	private double y;

	HeightSum(CupSectionState state, Palette palette) {
		this.state = state;
		this.palette = palette;
	}

	List<Element> draw() {
		elements.add(Text.of(Messages.of("section.title", state.label()), 0, y, Face.BOLD, SIZE * 1.25)
				.in(palette.ink()));
		y += LINE * 1.35;
		terms();
		state.target().ifPresent(target -> {
			elements.add(new Drawn(new Line(0, y - LINE * 0.72, WIDTH, y - LINE * 0.72),
					Style.stroked(palette.ink(), 0.12)));
			y += 0.35;
			row(Messages.of("section.target"), Figures.shown(LengthWords.roughly(target)), Face.BOLD, palette.ink());
			if (!state.tolerance().isEmpty()) {
				elements.add(Text.of(state.tolerance(), WIDTH, y - LINE * 0.25, Face.CONDENSED, SIZE * 0.9)
						.anchored(Anchor.END).in(palette.quiet()));
				y += LINE * 0.7;
			}
		});
		state.inCup().ifPresent(
				sum -> row(Messages.of("section.inCup"), Figures.shown(sum), Face.REGULAR, palette.ink()));
		state.missing().ifPresent(this::missing);
		if (!state.note().isEmpty()) {
			note();
		}
		return elements;
	}

	/** No finer than they are known, and so that they add up as they stand there. */
	private void terms() {
		if (state.terms().isEmpty()) {
			return;
		}
		List<Length> shown = RoughSum.of(state.terms().stream().map(Term::length).toList()).terms();
		for (int term = 0; term < shown.size(); term++) {
			row(state.terms().get(term).name(), signed(shown.get(term), term == 0), Face.REGULAR, palette.ink());
		}
	}

	private static String signed(Length length, boolean first) {
		return (first || length.signum() < 0 ? "" : "+ ") + Figures.shown(length).replace("\u2212", "\u2212 ");
	}

	private void row(String name, String figure, Face face, Ink ink) {
		elements.add(Text.of(name, 0, y, face, SIZE).in(ink));
		elements.add(Text.of(figure, WIDTH, y, face, SIZE).anchored(Anchor.END).in(ink));
		y += LINE;
	}

	static String missingInWords(Length missing) {
		return Messages.of(missing.signum() == 0 ? "section.exact"
				: missing.signum() > 0 ? "section.missing" : "section.tooMuch");
	}

	private void missing(Length missing) {
		Ink ink = state.isOff() ? palette.error() : palette.done();
		Length told = LengthWords.roughly(missing);
		row(missingInWords(told), told.signum() == 0 ? "\u2713" : Figures.shown(told.abs()), Face.BOLD, ink);
		y += LINE * 0.4;
		scale(missing, ink);
	}

	/** Where the face is against where it belongs; too low to the left. */
	private void scale(Length missing, Ink ink) {
		double middle = WIDTH / 2;
		double step = WIDTH / 2 / (REACH + 0.5);
		elements.add(new Drawn(new Line(0, y, WIDTH, y), Style.stroked(palette.quiet(), 0.1)));
		for (int half = -REACH; half <= REACH; half++) {
			double tick = half == 0 ? 1.1 : half % 2 == 0 ? 0.6 : 0.35;
			elements.add(new Drawn(new Line(middle + half * step, y - tick, middle + half * step, y + tick),
					Style.stroked(half == 0 ? palette.ink() : palette.quiet(), half == 0 ? 0.2 : 0.1)));
		}
		double off = Math.max(-REACH - 0.5, Math.min(REACH + 0.5, -2 * missing.inThou()));
		elements.add(new Drawn(new Circle(middle + off * step, y, 0.7), Style.filled(ink)));
		y += LINE;
		elements.add(caption(Messages.of("section.low"), 0, Anchor.START));
		elements.add(caption(Messages.of("section.high"), WIDTH, Anchor.END));
		y += LINE;
	}

	private Element caption(String text, double x, Anchor anchor) {
		return Text.of(text, x, y - 0.35, Face.CONDENSED, SIZE * 0.8).anchored(anchor).in(palette.quiet());
	}

	private void note() {
		y += LINE * 0.2;
		for (String line : state.note().split("\n")) {
			elements.add(Text.of(line, 0, y, Face.CONDENSED, SIZE * 0.9).in(palette.quiet()));
			y += LINE * 0.85;
		}
	}
}
