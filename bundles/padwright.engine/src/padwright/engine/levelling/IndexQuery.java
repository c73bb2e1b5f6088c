package padwright.engine.levelling;

import java.util.stream.IntStream;

/**
 * Finds in an index all lifts that level a residual r to the incumbent's window. Two tests leave out what cannot:
 *
 * <ul>
 * <li>Where a node is split on an axis, only a side that comes within the axis's {@linkplain Waves#slack slack} of the
 * residual's own value.
 * <li>For a lift L in a box, low ≤ L ≤ high, the spread of r − L is at least max(r − high) − min(r − low), each over
 * the stations; a box where that exceeds the window holds nothing of use. The stations are visited four at a time, a
 * quarter apart, because what is far too high on one side is mostly far too low on another.
 * </ul>
 */
final class IndexQuery {

	private static final int STATIONS = CandidatePieces.STATIONS;
	private static final int HOURS = STATIONS / 2;
	private static final int QUARTER = STATIONS / 4;
	private static final int[] FIRST_OF_FOUR = {0, 3, 1, 4, 2, 5};
	private static final int[] SLACK = IntStream.range(0, Waves.AXES).map(Waves::slack).toArray();
	/** Boxes of more lifts than this are so wide that testing them costs more than it saves. */
	private static final int MOST_BOXED = 1024;
	private static final int DEEPEST = 64;

	private final LiftIndex index;
	private final Incumbent incumbent;
	private final Meter meter;
	private final int[] twice = new int[2 * STATIONS];
	private final int[] sought = new int[Waves.AXES];
	private final int[] open = new int[DEEPEST];

	IndexQuery(LiftIndex index, Incumbent incumbent, Meter meter) {
		this.index = index;
		this.incumbent = incumbent;
		this.meter = meter;
	}

	/**
	 * Offers the incumbent every choice of closing pieces that keeps the window.
	 *
	 * @param waves of {@code residual}
	 * @param pieces those chosen so far, and room for the closing ones
	 * @param chosen how many are
	 */
	void run(int[] residual, int[] waves, int[] pieces, int chosen) {
		System.arraycopy(residual, 0, twice, 0, STATIONS);
		System.arraycopy(residual, 0, twice, STATIONS, STATIONS);
		for (int hour = 0; hour < HOURS; hour++) {
			if (Waves.mayLevel(waves, hour, incumbent.window())) {
				for (int axis = 0; axis < Waves.AXES; axis++) {
					sought[axis] = waves[Waves.position(axis, hour)];
				}
				descend(hour, pieces, chosen);
			}
		}
	}

	private void descend(int turn, int[] pieces, int chosen) {
		int depth = 0;
		open[depth++] = 0;
		while (depth > 0 && !meter.isSpent()) {
			int node = open[--depth];
			meter.count();
			if (mayHold(node, turn)) {
				int child = index.children(node);
				if (child == 0) {
					offer(node, turn, pieces, chosen);
				} else {
					depth = openChildren(node, child, depth);
				}
			}
		}
	}

	/** The new depth of what is open. */
	private int openChildren(int node, int child, int depth) {
		int axis = index.axis(node);
		int beyond = sought[axis] - index.split(node);
		int slack = SLACK[axis] * incumbent.window();
		int deeper = depth;
		if (beyond <= slack) {
			open[deeper++] = child;
		}
		if (-beyond <= slack) {
			open[deeper++] = child + 1;
		}
		return deeper;
	}

	private boolean mayHold(int node, int turn) {
		return index.end(node) - index.begin(node) > MOST_BOXED
				|| spread(index.highs(), index.lows(), node * STATIONS, 2 * turn) <= incumbent.window();
	}

	private void offer(int leaf, int turn, int[] pieces, int chosen) {
		for (int lift = index.begin(leaf); lift < index.end(leaf); lift++) {
			int spread = spread(index.lifts(), index.lifts(), lift * STATIONS, 2 * turn);
			if (spread <= incumbent.window()) {
				index.put(lift, turn, pieces, chosen);
				incumbent.offer(spread, pieces);
			}
		}
	}

	/** max(r − high) − min(r − low); once that is beyond the window, any value beyond it. */
	private int spread(int[] high, int[] low, int at, int turned) {
		int[] residual = twice;
		int window = incumbent.window();
		int most = Integer.MIN_VALUE;
		int least = Integer.MAX_VALUE;
		for (int first : FIRST_OF_FOUR) {
			int lift = at + first;
			int gap = turned + first;
			for (int quarter = 0; quarter < 4; quarter++) {
				most = Math.max(most, residual[gap] - high[lift]);
				least = Math.min(least, residual[gap] - low[lift]);
				lift += QUARTER;
				gap += QUARTER;
			}
			if (most - least > window) {
				break;
			}
		}
		return most - least;
	}
}
