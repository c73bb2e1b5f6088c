package padwright.paper.sheet;

import java.util.List;

import padwright.workup.words.Texts;

/**
 * How much smaller than life a map is drawn.
 *
 * @param reduction mm of the instrument for 1 mm of paper
 */
record DrawingScale(double reduction) {

	/** Usual reductions of engineering drawings (common practice, no source). */
	private static final List<Double> USUAL = List.of(1.0, 2.0, 2.5, 5.0, 10.0, 20.0, 50.0);

	/** The largest usual scale at which {@code length} mm fit into {@code room} mm. */
	static DrawingScale fitting(double length, double room) {
		return new DrawingScale(USUAL.stream().filter(each -> length / each <= room).findFirst().orElse(length / room));
	}

	/** Millimetres on paper. */
	double onPaper(double mm) {
		return mm / reduction;
	}

	/** As in {@code 1 : 2.5}. */
	@Override
	public String toString() {
		return "1 : " + (reduction == Math.rint(reduction) ? String.valueOf(Math.round(reduction))
				: Texts.decimal(String.valueOf(Math.round(reduction * 100) / 100.0)));
	}
}
