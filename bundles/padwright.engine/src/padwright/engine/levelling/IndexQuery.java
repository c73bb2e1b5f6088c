package padwright.engine.levelling;

/**
 * Finds in an index all lifts that level a residual to the incumbent's window.
 *
 * <p>For a lift L in a box, low ≤ L ≤ high, the spread of r − L is at least max(r − high) − min(r − low), each over the
 * stations; a box where that exceeds the window holds nothing of use. The stations are visited four at a time, a
 * quarter apart, because what is far too high on one side is mostly far too low on another.
 */
final class IndexQuery {

	private static final int STATIONS = Candidates.STATIONS;
	private static final int HOURS = STATIONS / 2;
	private static final int QUARTER = STATIONS / 4;
	private static final int[] FIRST_OF_FOUR = {0, 3, 1, 4, 2, 5};
	private static final int DEEPEST = 64;

	private final LiftIndex index;
	private final Incumbent incumbent;
	private final Meter meter;
	private final int[] twice = new int[2 * STATIONS];
	private final int[] open = new int[DEEPEST];

	IndexQuery(LiftIndex index, Incumbent incumbent, Meter meter) {
		this.index = index;
		this.incumbent = incumbent;
		this.meter = meter;
	}

	/**
	 * Offers the incumbent every choice of closing pieces that keeps the window.
	 *
	 * @param tilt of {@code residual}
	 * @param pieces those chosen so far, and room for the closing ones
	 * @param chosen how many are
	 */
	void run(int[] residual, int[] tilt, int[] pieces, int chosen) {
		System.arraycopy(residual, 0, twice, 0, STATIONS);
		System.arraycopy(residual, 0, twice, STATIONS, STATIONS);
		for (int hour = 0; hour < HOURS; hour++) {
			if (Tilt.mayLevel(tilt, hour, incumbent.window())) {
				descend(hour, pieces, chosen);
			}
		}
	}

	private void descend(int turn, int[] pieces, int chosen) {
		int depth = 0;
		if (mayHold(0, turn)) {
			open[depth++] = 0;
		}
		while (depth > 0 && !meter.isSpent()) {
			int node = open[--depth];
			int child = index.children(node);
			if (child == 0) {
				offer(node, turn, pieces, chosen);
			} else {
				if (mayHold(child, turn)) {
					open[depth++] = child;
				}
				if (mayHold(child + 1, turn)) {
					open[depth++] = child + 1;
				}
			}
		}
	}

	private boolean mayHold(int node, int turn) {
		meter.count();
		return spread(index.highs(), index.lows(), node * STATIONS, 2 * turn) <= incumbent.window();
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

	/** max(r − high) − min(r − low); too large a value may be returned early. */
	private int spread(int[] high, int[] low, int at, int turned) {
		int window = incumbent.window();
		int most = Integer.MIN_VALUE;
		int least = Integer.MAX_VALUE;
		for (int first : FIRST_OF_FOUR) {
			for (int station = first; station < STATIONS; station += QUARTER) {
				int residual = twice[turned + station];
				most = Math.max(most, residual - high[at + station]);
				least = Math.min(least, residual - low[at + station]);
			}
			if (most - least > window) {
				break;
			}
		}
		return most - least;
	}
}
