package padwright.engine.rim;

import padwright.engine.clock.ClockHour;

/** cos nθ and sin nθ, n = 1 … order, at the 24 stations. */
final class FourierBasis {

	private static final int QUARTER_TURN_BACK = ClockHour.STATIONS * 3 / 4;
	private static final double[] COSINES = cosines();

	private final int order;

	private FourierBasis(int order) {
		this.order = order;
	}

	static FourierBasis ofOrder(int order) {
		return new FourierBasis(order);
	}

	private static double[] cosines() {
		double[] cosines = new double[ClockHour.STATIONS];
		for (int station = 0; station < cosines.length; station++) {
			cosines[station] = StrictMath.cos(new ClockHour(station).angle());
		}
		return cosines;
	}

	/** How many functions there are, without the constant. */
	int size() {
		return 2 * order;
	}

	/** The harmonic of a function: 1, 1, 2, 2, 3, 3 … */
	static int harmonic(int function) {
		return function / 2 + 1;
	}

	/** A function at a station: cos θ, sin θ, cos 2θ, sin 2θ … */
	static double value(int function, int station) {
		return function % 2 == 0 ? cosine(harmonic(function), station) : sine(harmonic(function), station);
	}

	static double cosine(int harmonic, int station) {
		return COSINES[harmonic * station % ClockHour.STATIONS];
	}

	static double sine(int harmonic, int station) {
		return COSINES[(harmonic * station + QUARTER_TURN_BACK) % ClockHour.STATIONS];
	}
}
