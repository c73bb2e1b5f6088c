package padwright.paper.sound;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.DoubleStream;

import padwright.drawing.scene.Anchor;
import padwright.drawing.scene.Circle;
import padwright.drawing.scene.Drawn;
import padwright.drawing.scene.Element;
import padwright.drawing.scene.Face;
import padwright.drawing.scene.Ink;
import padwright.drawing.scene.Line;
import padwright.drawing.scene.Rectangle;
import padwright.drawing.scene.SolidFill;
import padwright.drawing.scene.Stroke;
import padwright.drawing.scene.Style;
import padwright.drawing.scene.Text;

/** Cents and strengths by note. */
final class SoundChart {

	private static final double[] CENTS = { 10, 20, 30, 50, 100, 200, 600 };
	private static final double[] DECIBELS = { 10, 20, 40, 100 };
	private static final double IN_TUNE = 5;
	private static final double SIZE = 2.6;
	/** Left of a chart: its numbers, mm. */
	private static final double NUMBERS = 11;
	private static final Ink SCALE = new Ink(0, 72, 128);
	private static final Ink OTHER = Ink.grey(95);
	private static final Ink GRID = Ink.grey(215);
	private static final Ink BAND = new Ink(226, 238, 226);

	private final NoteAxis axis;
	private final double width;
	private final List<Element> elements = new ArrayList<>();

	SoundChart(List<SoundMark> marks, double width) {
		this.width = width;
		axis = new NoteAxis(marks, NUMBERS, width - NUMBERS);
	}

	/** Cents above and below, {@code height} mm high without the names. */
	List<Element> cents(double height) {
		double most = range(CENTS, axis.marks().stream().mapToDouble(mark -> Math.abs(mark.cents().orElseThrow())));
		double zero = height / 2;
		double scale = height / 2 / (most * 1.08);
		elements.add(new Drawn(new Rectangle(NUMBERS, zero - IN_TUNE * scale, width - NUMBERS, 2 * IN_TUNE * scale),
				Style.filled(BAND)));
		for (double value : new double[] { -most, -most / 2, 0, most / 2, most }) {
			grid(zero - value * scale, String.format(Locale.ROOT, value == 0 ? "%.0f" : "%+.0f", value), value == 0);
		}
		elements.addAll(axis.octaves(0, height, true));
		join(zero, scale);
		axis.marks().stream().filter(mark -> !mark.usual()).forEach(mark -> elements.add(dot(mark, zero, scale)));
		axis.marks().stream().filter(SoundMark::usual).forEach(mark -> elements.add(dot(mark, zero, scale)));
		elements.addAll(axis.names(height));
		return elements;
	}

	/** How much stronger the resonance is than the next; bars of the usual fingerings. */
	List<Element> strengths(double height) {
		double most = range(DECIBELS, axis.marks().stream().flatMap(mark -> mark.decibels().stream())
				.mapToDouble(Math::abs));
		boolean isWeak = axis.marks().stream().anyMatch(mark -> mark.decibels().filter(some -> some < 0).isPresent());
		double zero = isWeak ? height * 0.7 : height;
		double scale = zero / (most * 1.08);
		for (double value : new double[] { 0, most / 2, most }) {
			grid(zero - value * scale, String.format(Locale.ROOT, "%.0f", value), value == 0);
		}
		elements.addAll(axis.octaves(0, height, false));
		for (SoundMark mark : axis.marks()) {
			if (mark.usual() && mark.decibels().isPresent()) {
				double end = Math.min(height, zero - mark.decibels().get() * scale);
				double broad = Math.min(3, axis.step() * 0.6);
				elements.add(new Drawn(new Rectangle(axis.x(mark) - broad / 2, Math.min(zero, end), broad,
						Math.abs(end - zero)), Style.filled(SCALE)));
			}
		}
		elements.addAll(axis.names(height));
		return elements;
	}

	private static double range(double[] ranges, DoubleStream values) {
		double most = values.max().orElse(0);
		return DoubleStream.of(ranges).filter(range -> range >= most).findFirst().orElse(most);
	}

	private void grid(double y, String number, boolean isZero) {
		elements.add(new Drawn(new Line(NUMBERS, y, width, y), Style.stroked(isZero ? Ink.grey(90) : GRID, 0.25)));
		elements.add(Text.of(number, NUMBERS - 1.2, y + SIZE * 0.36, Face.CONDENSED, SIZE).anchored(Anchor.END));
	}

	/** Neighbours of the scale, so that its course is seen. */
	private void join(double zero, double scale) {
		Optional<SoundMark> before = Optional.empty();
		for (SoundMark mark : axis.marks().stream().filter(SoundMark::usual).toList()) {
			before.ifPresent(last -> elements.add(new Drawn(new Line(axis.x(last), y(last, zero, scale), axis.x(mark),
					y(mark, zero, scale)), Style.stroked(SCALE, 0.3))));
			before = Optional.of(mark);
		}
	}

	private Element dot(SoundMark mark, double zero, double scale) {
		double radius = Math.min(1.1, axis.step() * 0.32);
		Circle circle = new Circle(axis.x(mark), y(mark, zero, scale), mark.usual() ? radius : radius * 0.8);
		return new Drawn(circle, mark.usual() ? Style.filled(SCALE)
				: Style.of(new SolidFill(Ink.WHITE), Stroke.of(OTHER, 0.3)));
	}

	private static double y(SoundMark mark, double zero, double scale) {
		return zero - mark.cents().orElseThrow() * scale;
	}
}
