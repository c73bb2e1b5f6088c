package padwright.engine.diagnosis;

import java.util.List;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;

/** Turns notes and names into conflicts and bit masks, and what the search finds back into names. */
final class SuspectFinder {

	private final List<String> pads;
	private final List<Long> conflicts;
	private final PadWeights weights;

	/** @param conflicts one set of pads for each bad note, none empty */
	SuspectFinder(List<Set<String>> conflicts, PadWeights weights) {
		SortedSet<String> names = new TreeSet<>();
		conflicts.forEach(names::addAll);
		if (names.size() > Long.SIZE) {
			throw new IllegalArgumentException(names.size() + " pads under suspicion are more than " + Long.SIZE);
		}
		pads = List.copyOf(names);
		this.conflicts = conflicts.stream().map(this::mask).toList();
		this.weights = weights;
	}

	HittingSetSearch.Result search(SearchLimits limits) {
		return new HittingSetSearch(conflicts, odds(), limits).run();
	}

	List<SuspectSet> named(List<HittingSetSearch.Scored> sets) {
		double total = sets.stream().mapToDouble(HittingSetSearch.Scored::score).reduce(0, Double::sum);
		return sets.stream().map(set -> new SuspectSet(names(set.members()), set.score() / total)).toList();
	}

	/** The pads' weights scaled to a sum of one: about one leak is expected among all that are suspect. */
	private double[] odds() {
		double total = pads.stream().mapToDouble(weights::of).reduce(0, Double::sum);
		return pads.stream().mapToDouble(pad -> weights.of(pad) / total).toArray();
	}

	private long mask(Set<String> names) {
		return names.stream().mapToLong(name -> 1L << pads.indexOf(name)).reduce(0, (a, b) -> a | b);
	}

	private SortedSet<String> names(long members) {
		SortedSet<String> names = new TreeSet<>();
		for (long rest = members; rest != 0; rest &= rest - 1) {
			names.add(pads.get(Long.numberOfTrailingZeros(rest)));
		}
		return names;
	}
}
