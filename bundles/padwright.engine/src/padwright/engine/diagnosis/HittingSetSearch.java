package padwright.engine.diagnosis;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.PriorityQueue;

/**
 * Minimal hitting sets of conflicts (Reiter 1987), likeliest first. Sets are bit masks over at most 64 elements. A
 * set's score is the product of its elements' odds, each at most 1, so that no set scores higher than its parts and
 * the best open part bounds all that is still to come.
 */
final class HittingSetSearch {

	/** Parts looked at before the search gives up and says so; all parts of 30 pads up to 5 pads are fewer. */
	static final int MOST_PARTS = 200_000;

	/** @param moreMayExist whether a limit may have hidden sets */
	record Result(List<Scored> sets, boolean moreMayExist) {
	}

	/** @param allowed elements that may still join; the others are left to sibling parts */
	record Scored(long members, long allowed, double score) {
	}

	static final Comparator<Scored> LIKELIEST_FIRST = Comparator.comparingDouble(Scored::score).reversed()
			.thenComparingInt(set -> Long.bitCount(set.members()))
			.thenComparing(Scored::members, HittingSetSearch::compareElements);

	private final List<Long> conflicts;
	private final double[] odds;
	private final SearchLimits limits;
	private final PriorityQueue<Scored> open = new PriorityQueue<>(LIKELIEST_FIRST);
	private boolean cutBySize;

	/** @param odds by element, above 0 and at most 1 */
	HittingSetSearch(List<Long> conflicts, double[] odds, SearchLimits limits) {
		this.conflicts = withoutSupersets(conflicts);
		this.odds = odds;
		this.limits = limits;
	}

	Result run() {
		List<Scored> found = new ArrayList<>();
		open.add(new Scored(0, -1, 1));
		for (int parts = 0; !open.isEmpty() && parts < MOST_PARTS; parts++) {
			Scored part = open.poll();
			long missed = firstMissedBy(part.members);
			if (missed != 0) {
				extend(part, missed);
			} else if (found.size() == limits.sets()) {
				return new Result(found, true);
			} else {
				found.add(part);
			}
		}
		return new Result(found, cutBySize || !open.isEmpty());
	}

	/** Each extension leaves the elements before its own to its siblings, so that no set is met twice. */
	private void extend(Scored part, long missed) {
		long allowed = part.allowed;
		for (long rest = missed & allowed; rest != 0; rest &= rest - 1) {
			long element = Long.lowestOneBit(rest);
			allowed &= ~element;
			long members = part.members | element;
			if (!isEveryMemberNeeded(members)) {
				continue;
			}
			if (Long.bitCount(members) > limits.pads()) {
				cutBySize = true;
			} else {
				open.add(new Scored(members, allowed, score(members)));
			}
		}
	}

	/** Whether every member alone hits some conflict; if not, no larger set can be minimal either. */
	private boolean isEveryMemberNeeded(long members) {
		long needed = 0;
		for (long conflict : conflicts) {
			long hits = conflict & members;
			if (Long.bitCount(hits) == 1) {
				needed |= hits;
			}
		}
		return needed == members;
	}

	/** The first conflict that is not hit, or 0. */
	private long firstMissedBy(long members) {
		for (long conflict : conflicts) {
			if ((conflict & members) == 0) {
				return conflict;
			}
		}
		return 0;
	}

	/** Multiplied in the order of size, so that sets of equal odds score equally to the last bit. */
	private double score(long members) {
		double[] factors = new double[Long.bitCount(members)];
		int count = 0;
		for (long rest = members; rest != 0; rest &= rest - 1) {
			factors[count++] = odds[Long.numberOfTrailingZeros(rest)];
		}
		Arrays.sort(factors);
		double product = 1;
		for (double factor : factors) {
			product *= factor;
		}
		return product;
	}

	/** The lists of elements in dictionary order, for sets of one size. */
	private static int compareElements(long first, long second) {
		long difference = first ^ second;
		return difference == 0 ? 0 : (first & Long.lowestOneBit(difference)) != 0 ? -1 : 1;
	}

	/** Smallest first, which keeps the search narrow. */
	private static List<Long> withoutSupersets(List<Long> conflicts) {
		List<Long> sorted = conflicts.stream().distinct()
				.sorted(Comparator.<Long>comparingInt(Long::bitCount).thenComparing(Comparator.naturalOrder())).toList();
		List<Long> minimal = new ArrayList<>();
		for (long conflict : sorted) {
			if (minimal.stream().noneMatch(smaller -> (smaller & conflict) == smaller)) {
				minimal.add(conflict);
			}
		}
		return minimal;
	}
}
