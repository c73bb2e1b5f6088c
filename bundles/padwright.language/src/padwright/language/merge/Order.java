package padwright.language.merge;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** The order in which the parts of both sides stand in the merged text. */
final class Order {

	private static final String BEFORE_ALL = "";

	private final Map<String, Part> base;
	private final Map<String, Part> ours;
	private final Map<String, Part> theirs;

	private Order(Map<String, Part> base, Map<String, Part> ours, Map<String, Part> theirs) {
		this.base = base;
		this.ours = ours;
		this.theirs = theirs;
	}

	/** The keys of all parts that any side has; nothing if both moved parts, and differently. */
	static Optional<List<String>> of(Map<String, Part> base, Map<String, Part> ours, Map<String, Part> theirs) {
		return new Order(base, ours, theirs).merged();
	}

	private Optional<List<String>> merged() {
		List<String> shared = sharedIn(base);
		List<String> first = sharedIn(ours);
		List<String> second = sharedIn(theirs);
		if (!first.equals(shared) && !second.equals(shared) && !first.equals(second)) {
			return Optional.empty();
		}
		return Optional.of(withOthers(first.equals(shared) ? second : first));
	}

	private List<String> sharedIn(Map<String, Part> copy) {
		return copy.keySet().stream()
				.filter(key -> base.containsKey(key) && ours.containsKey(key) && theirs.containsKey(key)).toList();
	}

	/** What only one side has, or both have anew, stands where it stands there; of two in one place by their keys. */
	private List<String> withOthers(List<String> shared) {
		Set<String> anchors = new HashSet<>(shared);
		Map<String, List<String>> firstRuns = runs(ours, anchors, Set.of());
		Map<String, List<String>> secondRuns = runs(theirs, anchors, ours.keySet());
		List<String> all = new ArrayList<>(joined(BEFORE_ALL, firstRuns, secondRuns));
		for (String key : shared) {
			all.add(key);
			all.addAll(joined(key, firstRuns, secondRuns));
		}
		Map<String, Integer> ranks = ranks();
		all.sort(Comparator.comparing(ranks::get));
		return all;
	}

	private static Map<String, List<String>> runs(Map<String, Part> side, Set<String> shared, Set<String> elsewhere) {
		Map<String, List<String>> runs = new LinkedHashMap<>();
		String anchor = BEFORE_ALL;
		for (String key : side.keySet()) {
			if (shared.contains(key)) {
				anchor = key;
			} else if (!elsewhere.contains(key)) {
				runs.computeIfAbsent(anchor, at -> new ArrayList<>()).add(key);
			}
		}
		return runs;
	}

	private static List<String> joined(String anchor, Map<String, List<String>> some, Map<String, List<String>> others) {
		List<List<String>> runs = new ArrayList<>(List.of(some.getOrDefault(anchor, List.of()),
				others.getOrDefault(anchor, List.of())));
		runs.removeIf(List::isEmpty);
		runs.sort(Comparator.comparing(run -> run.get(0)));
		return runs.stream().flatMap(List::stream).toList();
	}

	private Map<String, Integer> ranks() {
		Map<String, Integer> ranks = new HashMap<>();
		List.of(ours, theirs).forEach(side -> side.forEach((key, part) -> ranks.put(key, part.rank())));
		return ranks;
	}
}
