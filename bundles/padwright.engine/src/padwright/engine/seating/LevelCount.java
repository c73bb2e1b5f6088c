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
	private final double[][] low;
	private final double[][] high;
	private final double[][] inverse;

	LevelCount(PossibleRims rims, ActionTable actions, double width) {
		this.actions = actions;
		count = rims.count();
		nodes = new int[count];
		low = new double[count][STATIONS];
		high = new double[count][STATIONS];
		inverse = new double[count][STATIONS];
		for (int rim = 0; rim < count; rim++) {
			prepare(rim, rims.rim(rim), width);
		}
	}

	private void prepare(int rim, RimNow now, double width) {
		nodes[rim] = now.stiffnessNode();
		for (int station = 0; station < STATIONS; station++) {
			inverse[rim][station] = 1 / now.weights()[station];
			high[rim][station] = now.clearance()[station] * inverse[rim][station];
			low[rim][station] = (now.clearance()[station] - width) * inverse[rim][station];
		}
	}

	int count() {
		return count;
	}

	/** The rims that a lift and one action level. */
	long[] levelled(double[][] lifts, int action) {
		long[] all = new long[(count + 63) / 64];
		for (int rim = 0; rim < count; rim++) {
			all[rim >> 6] |= 1L << rim;
		}
		return levelled(all, lifts, action);
	}

	/** The rims of a set that a lift and one action level. */
	long[] levelled(long[] set, double[][] lifts, int action) {
		long[] levelled = new long[set.length];
		for (int word = 0; word < set.length; word++) {
			for (long bits = set[word]; bits != 0; bits &= bits - 1) {
				int rim = word * 64 + Long.numberOfTrailingZeros(bits);
				if (isLevel(rim, lifts[nodes[rim]], actions.lift(action, nodes[rim]))) {
					levelled[word] |= Long.lowestOneBit(bits);
				}
			}
		}
		return levelled;
	}

	/**
	 * How many rims of a set a lift and one action level, exactly or some number below {@code least}.
	 *
	 * @param candidates how many are in the set
	 * @param lifts by stiffness and station, in nm
	 */
	int levelled(long[] set, int candidates, int least, double[][] lifts, int action) {
		int left = candidates;
		for (int word = 0; word < set.length; word++) {
			for (long bits = set[word]; bits != 0; bits &= bits - 1) {
				int rim = word * 64 + Long.numberOfTrailingZeros(bits);
				if (!isLevel(rim, lifts[nodes[rim]], actions.lift(action, nodes[rim])) && --left < least) {
					return left;
				}
			}
		}
		return left;
	}

	private boolean isLevel(int rim, double[] one, double[] other) {
		double[] lows = low[rim];
		double[] highs = high[rim];
		double[] inverses = inverse[rim];
		double floor = Double.NEGATIVE_INFINITY;
		double ceiling = Double.POSITIVE_INFINITY;
		for (int station : ORDER) {
			double lift = (one[station] + other[station]) * inverses[station];
			floor = Math.max(floor, lows[station] - lift);
			ceiling = Math.min(ceiling, highs[station] - lift);
			if (floor > ceiling) {
				return false;
			}
		}
		return true;
	}
}
