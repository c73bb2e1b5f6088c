package padwright.workup.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

import padwright.workup.words.Messages;

/** What is said of the keys of a plan: of each its own, and last, once, what goes for nearly all. */
final class KeyNotes {

	/** What goes for fewer is said of each. */
	private static final int MANY = 4;
	/** So many may be left out of what goes for the others. */
	private static final int EXCEPT = 2;

	private KeyNotes() {
	}

	/** @param byKey notes by the key's label, in the order of the plan */
	static List<String> of(Map<String, List<String>> byKey) {
		Map<String, Set<String>> keys = new LinkedHashMap<>();
		byKey.forEach((key, notes) -> notes.forEach(note -> keys.computeIfAbsent(note, none -> new LinkedHashSet<>()).add(key)));
		keys.values().removeIf(those -> those.size() < MANY || byKey.size() - those.size() > EXCEPT);
		List<String> lines = new ArrayList<>();
		byKey.forEach((key, notes) -> notes.stream().filter(note -> !keys.containsKey(note))
				.forEach(note -> lines.add(Messages.of("report.leftOutAt", key, note))));
		keys.forEach((note, those) -> lines.add(shared(byKey.keySet().stream().filter(key -> !those.contains(key)).toList(), note)));
		return lines;
	}

	private static String shared(List<String> others, String note) {
		return others.isEmpty() ? Messages.of("report.solve.everyKey", note)
				: Messages.of("report.solve.allBut", String.join(", ", others), note);
	}
}
