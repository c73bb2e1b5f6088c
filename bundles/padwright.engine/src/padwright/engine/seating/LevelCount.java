package padwright.engine.seating;

import padwright.engine.evidence.RimNow;

/**
 * Counts the rims of a sample that a lift levels to within a width: a key that turns until it touches leaves no more than
 * the width open exactly if max (f − L − width)/w ≤ min (f − L)/w over the stations. Changes; for one thread.
 */
final class LevelCount {

	private static final int STATIONS = PossibleRims.STATIONS;
	/** Far apart first, where a rim that is not level shows soonest. */
	private static final int[] ORDER = { 0, 12, 6, 18, 3, 15, 9, 21, 1, 13, 7, 19, 4, 16, 10, 22, 2, 14, 8, 20, 5, 17, 11,
			23 };

	private final ActionTable actions;
	private final int count;
	private final int[] nodes;
	private final double[][] clearance;
	private final double[][] inverse;
	private final double width;
	/** (f − L)/w and (f − L − width)/w under the lift that is gone on from. */
	private final double[][] high;
	private final double[][] low;
	private final int[] lowest;
	private final int[] highest;
	private final double[] lowThere;
	private final double[] inverseThere;
	private final double[] highHere;
	private final double[] inverseHere;

	LevelCount(PossibleRims rims, ActionTable actions, double width) {
		this.actions = actions;
		this.width = width;
		count = rims.count();
		nodes = new int[count];
		clearance = new double[count][];
		inverse = new double[count][STATIONS];
		high = new double[count][STATIONS];
		low = new double[count][STATIONS];
		lowest = new int[count];
		highest = new int[count];
		lowThere = new double[count];
		inverseThere = new double[count];
		highHere = new double[count];
		inverseHere = new double[count];
		for (int rim = 0; rim < count; rim++) {
			RimNow now = rims.rim(rim);
			nodes[rim] = now.stiffnessNode();
			clearance[rim] = now.clearance();
			for (int station = 0; station < STATIONS; station++) {
				inverse[rim][station] = 1 / now.weights()[station];
			}
		}
	}

	int count() {
		return count;
	}

	/** The first 64 rims, as bits. */
	long all() {
		return count < Long.SIZE ? (1L << count) - 1 : -1;
	}

	/** From now on, actions come on top of a lift, by stiffness and station in nm. */
	void goOnFrom(double[][] lifts) {
		for (int rim = 0; rim < count; rim++) {
			lowest[rim] = 0;
			highest[rim] = 0;
			double[] lift = lifts[nodes[rim]];
			for (int station = 0; station < STATIONS; station++) {
				double open = clearance[rim][station] - lift[station];
				high[rim][station] = open * inverse[rim][station];
				low[rim][station] = (open - width) * inverse[rim][station];
				lowest[rim] = high[rim][station] < high[rim][lowest[rim]] ? station : lowest[rim];
				highest[rim] = low[rim][station] > low[rim][highest[rim]] ? station : highest[rim];
			}
			lowThere[rim] = low[rim][highest[rim]];
			inverseThere[rim] = inverse[rim][highest[rim]];
			highHere[rim] = high[rim][lowest[rim]];
			inverseHere[rim] = inverse[rim][lowest[rim]];
		}
	}

	/** The rims that one more action levels. */
	long[] levelled(int action) {
		long[] levelled = new long[(count + 63) / 64];
		for (int rim = 0; rim < count; rim++) {
			if (isLevel(rim, actions.lift(action, nodes[rim]))) {
				levelled[rim >> 6] |= 1L << rim;
			}
		}
		return levelled;
	}

	/**
	 * How many rims of a set one more action levels, exactly or some number below {@code least}.
	 *
	 * @param set some of the first 64 rims, as bits
	 */
	int levelled(long set, int least, int action) {
		int left = Long.bitCount(set);
		for (long bits = set; bits != 0 && left >= least; bits &= bits - 1) {
			int rim = Long.numberOfTrailingZeros(bits);
			left -= isLevel(rim, actions.lift(action, nodes[rim])) ? 0 : 1;
		}
		return left;
	}

	private boolean isLevel(int rim, double[] lift) {
		if (lowThere[rim] - lift[highest[rim]] * inverseThere[rim] > highHere[rim]
				- lift[lowest[rim]] * inverseHere[rim]) {
			return false;
		}
		double[] lows = low[rim];
		double[] highs = high[rim];
		double[] inverses = inverse[rim];
		double floor = Double.NEGATIVE_INFINITY;
		double ceiling = Double.POSITIVE_INFINITY;
		for (int station : ORDER) {
			double lifted = lift[station] * inverses[station];
			floor = Math.max(floor, lows[station] - lifted);
			ceiling = Math.min(ceiling, highs[station] - lifted);
			if (floor > ceiling) {
				return false;
			}
		}
		return true;
	}
}
