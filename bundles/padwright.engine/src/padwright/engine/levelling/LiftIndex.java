package padwright.engine.levelling;

import java.util.Arrays;

/**
 * All lifts of one or of two pieces together, in a tree of boxes: every node knows the least and the most that the
 * lifts below it reach at each station.
 *
 * <p>Lifts that differ by a turn of whole hours are kept once, turned so that they are highest toward 12 o'clock, and
 * lifts are kept less their mean, which changes no spread.
 */
final class LiftIndex {

	static final int STATIONS = CandidatePieces.STATIONS;
	private static final int HOURS = STATIONS / 2;
	private static final int LEAF_SIZE = 8;
	private static final int SAMPLES = 48;

	private final CandidatePieces candidates;
	private final int pieces;
	private final Waves waves;
	private int size;
	private int[] first;
	private int[] second;
	private int[] lifts;
	private int nodes = 1;
	private final int[] begins;
	private final int[] ends;
	private final int[] children;
	private final int[] axes;
	private final int[] splits;
	private final int[] lows;
	private final int[] highs;

	/** @param pieces 1 or 2 */
	LiftIndex(CandidatePieces candidates, Waves waves, int pieces) {
		this.candidates = candidates;
		this.pieces = pieces;
		this.waves = waves;
		collect();
		int mostNodes = 4 * size / LEAF_SIZE + 2;
		begins = new int[mostNodes];
		ends = new int[mostNodes];
		children = new int[mostNodes];
		axes = new int[mostNodes];
		splits = new int[mostNodes];
		lows = new int[mostNodes * STATIONS];
		highs = new int[mostNodes * STATIONS];
		arrange();
	}

	/** How many pieces each lift is of. */
	int pieces() {
		return pieces;
	}

	/** Puts the pieces of a lift, turned by some hours, into {@code target} from {@code at}. */
	void put(int lift, int hours, int[] target, int at) {
		target[at] = candidates.turned(first[lift], hours);
		if (pieces == 2) {
			target[at + 1] = candidates.turned(second[lift], hours);
		}
	}

	/** Lift {@code i} at a station is at {@code i * STATIONS + station}. */
	int[] lifts() {
		return lifts;
	}

	/** A node's first lift; its last is before {@link #end}. */
	int begin(int node) {
		return begins[node];
	}

	int end(int node) {
		return ends[node];
	}

	/** The first of a node's two children, which are neighbours; 0 for a leaf. Node 0 is the root. */
	int children(int node) {
		return children[node];
	}

	/** The axis on which a node's lifts are split: those up to {@link #split} are in its first child. */
	int axis(int node) {
		return axes[node];
	}

	int split(int node) {
		return splits[node];
	}

	/** The least of node {@code n} at a station is at {@code n * STATIONS + station}. */
	int[] lows() {
		return lows;
	}

	int[] highs() {
		return highs;
	}

	private void collect() {
		int perStart = candidates.count() / HOURS;
		int room = pieces == 1 ? perStart : perStart * (candidates.count() + HOURS) / 2 + perStart;
		first = new int[room];
		second = new int[pieces == 1 ? 0 : room];
		for (int one = 0; one < perStart; one++) {
			if (pieces == 1) {
				add(one, -1);
			} else {
				collectPairs(one, perStart);
			}
		}
		first = Arrays.copyOf(first, size);
		second = Arrays.copyOf(second, pieces == 1 ? 0 : size);
	}

	/** A second piece starting beyond six hours is the first of a pair already met, turned. */
	private void collectPairs(int one, int perStart) {
		int half = HOURS / 2;
		for (int other = 0; other < (half + 1) * perStart; other++) {
			int later = other / perStart;
			if (later % half != 0 || other % perStart >= one) {
				add(one, other);
			}
		}
	}

	private void add(int one, int other) {
		int back = (HOURS - hourOfHighest(one, other)) % HOURS;
		first[size] = candidates.turned(one, back);
		if (pieces == 2) {
			second[size] = candidates.turned(other, back);
		}
		size++;
	}

	private int hourOfHighest(int one, int other) {
		int highest = 0;
		int tilt = Integer.MIN_VALUE;
		for (int hour = 0; hour < HOURS; hour++) {
			int toward = waves.tilt(one, hour) + (pieces == 1 ? 0 : waves.tilt(other, hour));
			if (toward > tilt) {
				tilt = toward;
				highest = hour;
			}
		}
		return highest;
	}

	private void arrange() {
		int[] unordered = new int[size * STATIONS];
		int[] onAxes = new int[size * Waves.AXES];
		int[] order = new int[size];
		for (int i = 0; i < size; i++) {
			fill(unordered, i);
			for (int axis = 0; axis < Waves.AXES; axis++) {
				onAxes[i * Waves.AXES + axis] = Waves.onAxis(axis, unordered, i * STATIONS);
			}
			order[i] = i;
		}
		split(0, 0, size, order, onAxes);
		reorder(order, unordered);
		for (int node = nodes - 1; node >= 0; node--) {
			bound(node);
		}
	}

	private void reorder(int[] order, int[] unordered) {
		int[] one = first.clone();
		int[] other = second.clone();
		lifts = new int[unordered.length];
		for (int i = 0; i < size; i++) {
			System.arraycopy(unordered, order[i] * STATIONS, lifts, i * STATIONS, STATIONS);
			first[i] = one[order[i]];
			if (pieces == 2) {
				second[i] = other[order[i]];
			}
		}
	}

	private void fill(int[] target, int index) {
		int[] source = candidates.lifts();
		int to = index * STATIONS;
		int sum = 0;
		for (int station = 0; station < STATIONS; station++) {
			int lift = source[first[index] * STATIONS + station]
					+ (pieces == 1 ? 0 : source[second[index] * STATIONS + station]);
			target[to + station] = lift;
			sum += lift;
		}
		int mean = Math.floorDiv(sum, STATIONS);
		for (int station = 0; station < STATIONS; station++) {
			target[to + station] -= mean;
		}
	}

	private void split(int node, int begin, int end, int[] order, int[] onAxes) {
		begins[node] = begin;
		ends[node] = end;
		if (end - begin > LEAF_SIZE) {
			int middle = (begin + end) >>> 1;
			int axis = widestAxis(begin, end, order, onAxes);
			Median.split(order, begin, end, middle, onAxes, Waves.AXES, axis);
			axes[node] = axis;
			splits[node] = onAxes[order[middle] * Waves.AXES + axis];
			int child = nodes;
			nodes += 2;
			children[node] = child;
			split(child, begin, middle, order, onAxes);
			split(child + 1, middle, end, order, onAxes);
		}
	}

	private static int widestAxis(int begin, int end, int[] order, int[] onAxes) {
		int step = Math.max(1, (end - begin) / SAMPLES);
		int widest = 0;
		double width = -1;
		for (int axis = 0; axis < Waves.AXES; axis++) {
			int low = Integer.MAX_VALUE;
			int high = Integer.MIN_VALUE;
			for (int i = begin; i < end; i += step) {
				int value = onAxes[order[i] * Waves.AXES + axis];
				low = Math.min(low, value);
				high = Math.max(high, value);
			}
			double slacks = ((double) high - low) / Waves.slack(axis);
			if (slacks > width) {
				width = slacks;
				widest = axis;
			}
		}
		return widest;
	}

	private void bound(int node) {
		int at = node * STATIONS;
		Arrays.fill(lows, at, at + STATIONS, Integer.MAX_VALUE);
		Arrays.fill(highs, at, at + STATIONS, Integer.MIN_VALUE);
		int child = children[node];
		if (child == 0) {
			for (int i = begins[node]; i < ends[node]; i++) {
				widen(at, lifts, lifts, i * STATIONS);
			}
		} else {
			widen(at, lows, highs, child * STATIONS);
			widen(at, lows, highs, (child + 1) * STATIONS);
		}
	}

	private void widen(int at, int[] low, int[] high, int from) {
		for (int station = 0; station < STATIONS; station++) {
			lows[at + station] = Math.min(lows[at + station], low[from + station]);
			highs[at + station] = Math.max(highs[at + station], high[from + station]);
		}
	}
}
