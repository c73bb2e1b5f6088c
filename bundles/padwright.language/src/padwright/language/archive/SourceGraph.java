package padwright.language.archive;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentHashMap;

/** What the files give that others have links to, and what the result for a file depends on in them. */
final class SourceGraph {

	/**
	 * A file that others may have links to.
	 *
	 * @param names that it gives
	 * @param uses the files that it has links to itself
	 */
	record Source(String hash, List<String> names, List<String> uses) {
	}

	/** On what a result depends; thousands of plans depend on the same few files. */
	private record Dependence(List<String> uses, boolean asksForNames) {
	}

	private final Map<String, Source> sources = new TreeMap<>();
	private final Map<Dependence, String> bases = new ConcurrentHashMap<>();
	private String wholes = "";
	private String allNames = "";
	private String all = "";
	private boolean ambiguous;

	/** @param sources by their paths in the shop */
	SourceGraph(Map<String, Source> sources) {
		this.sources.putAll(sources);
		List<String> givenWholes = new ArrayList<>();
		List<String> given = new ArrayList<>();
		Set<String> seen = new HashSet<>();
		this.sources.forEach((path, source) -> source.names().forEach(name -> {
			given.add(path + name);
			if (GivenNames.isOfWhole(name)) {
				givenWholes.add(path + name);
				ambiguous |= !seen.add(name);
			}
		}));
		wholes = Fingerprint.of(givenWholes);
		allNames = Fingerprint.of(given);
		all = Fingerprint.of(this.sources.entrySet().stream().map(each -> each.getKey() + each.getValue().hash())
				.toList());
	}

	/**
	 * A fingerprint of all that a result depends on beside the text of its file: the files it has links to, directly or
	 * through these; which systems and stocks there are; all names where a message lists them; and all there is where
	 * two of one name make it unclear which is meant.
	 */
	String basis(FileResult result) {
		return bases.computeIfAbsent(new Dependence(result.uses(), result.asksForNames()), this::basis);
	}

	private String basis(Dependence result) {
		List<String> parts = new ArrayList<>();
		parts.add(wholes);
		parts.add(result.asksForNames() ? allNames : "");
		parts.add(ambiguous ? all : "");
		for (String path : reachable(result.uses())) {
			parts.add(path);
			parts.add(sources.containsKey(path) ? sources.get(path).hash() : "");
		}
		return Fingerprint.of(parts);
	}

	private Set<String> reachable(List<String> uses) {
		Set<String> reached = new TreeSet<>(uses);
		Deque<String> open = new ArrayDeque<>(uses);
		while (!open.isEmpty()) {
			Source source = sources.get(open.poll());
			for (String next : source == null ? List.<String>of() : source.uses()) {
				if (reached.add(next)) {
					open.add(next);
				}
			}
		}
		return reached;
	}
}
