package padwright.engine.levelling;

import java.util.Arrays;

/**
 * A way to weigh the stations that shows how far a residual is from level. The weights wᵢ sum to zero, and those above
 * zero sum to the {@link #norm}, so for any residual r
 *
 * <pre>Σ wᵢ rᵢ ≤ norm · max r − norm · min r = norm · spread(r)</pre>
 *
 * A spread of at most u is thus possible only if Σ wᵢ rᵢ ≤ norm · u. What the residual has in excess of that must be
 * taken away by the pieces still to come: if m may be placed, the one that takes away most takes at least an m-th.
 *
 * <p>Candidates are sorted by what they take away, so that those worth trying are the first few. One such list serves
 * all twelve turns of a direction, because turning both direction and piece by an hour changes nothing.
 */
final class Direction {

	private static final int STATIONS = CandidatePieces.STATIONS;

	private final int[] weights;
	private final int norm;
	private final int[] takes;
	private final int[] order;
	private final int[] sorted;

	/** @param weights one for each station, at most 8 either way, summing to zero */
	Direction(int[] weights, CandidatePieces candidates) {
		this.weights = weights;
		this.norm = Arrays.stream(weights).filter(weight -> weight > 0).sum();
		int count = candidates.count();
		this.takes = new int[count];
		this.order = new int[count];
		this.sorted = new int[count];
		sort(candidates);
	}

	private void sort(CandidatePieces candidates) {
		long[] keys = new long[takes.length];
		for (int id = 0; id < keys.length; id++) {
			takes[id] = weigh(candidates.lifts(), id * STATIONS, 0);
			keys[id] = ((long) -takes[id] << Integer.SIZE) + id;
		}
		Arrays.sort(keys);
		for (int rank = 0; rank < keys.length; rank++) {
			order[rank] = (int) keys[rank];
			sorted[rank] = takes[order[rank]];
		}
	}

	/** Sum of the weights above zero. */
	int norm() {
		return norm;
	}

	/** What a candidate takes away in this direction, not turned. */
	int takenBy(int id) {
		return takes[id];
	}

	/** The candidate that takes away most but {@code rank} others. */
	int candidate(int rank) {
		return order[rank];
	}

	/** What that candidate takes away. */
	int taken(int rank) {
		return sorted[rank];
	}

	/** Σ wᵢ vᵢ of the values from {@code offset}, with the direction turned by {@code hours}. */
	int weigh(int[] values, int offset, int hours) {
		int sum = 0;
		for (int station = 0; station < STATIONS; station++) {
			int turned = station + 2 * hours;
			sum += weights[station] * values[offset + (turned >= STATIONS ? turned - STATIONS : turned)];
		}
		return sum;
	}

	/** How many candidates take away at least {@code least}. */
	int countTaking(long least) {
		int low = 0;
		int high = sorted.length;
		while (low < high) {
			int middle = (low + high) >>> 1;
			if (sorted[middle] >= least) {
				low = middle + 1;
			} else {
				high = middle;
			}
		}
		return low;
	}
}
