package padwright.workup.compare;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

import padwright.model.keysystem.KeySystem;
import padwright.model.systems.EffectiveSystem;

/**
 * Two key systems with all that they inherit, part by part.
 *
 * @param parts that both have, in the order of the new one, such as {@code key F}
 * @param onlyThen parts that only the old one has
 * @param onlyNow parts that only the new one has
 */
public record SystemComparison(KeySystem then, KeySystem now, List<KeyComparison> parts, List<String> onlyThen,
		List<String> onlyNow) {

	private static final String NOT_SAID = "not said";

	public SystemComparison {
		parts = List.copyOf(parts);
		onlyThen = List.copyOf(onlyThen);
		onlyNow = List.copyOf(onlyNow);
	}

	/** Parts of one kind and name are compared. */
	public static SystemComparison of(KeySystem then, KeySystem now) {
		Map<String, Map<String, String>> earlier = new LinkedHashMap<>(SystemFacts.of(EffectiveSystem.of(then)));
		List<KeyComparison> parts = new ArrayList<>();
		List<String> onlyNow = new ArrayList<>();
		SystemFacts.of(EffectiveSystem.of(now)).forEach((part, facts) -> {
			Map<String, String> before = earlier.remove(part);
			if (before == null) {
				onlyNow.add(part);
			} else {
				parts.add(new KeyComparison(part, part, changes(before, facts)));
			}
		});
		return new SystemComparison(then, now, parts, List.copyOf(earlier.keySet()), onlyNow);
	}

	private static List<Change> changes(Map<String, String> then, Map<String, String> now) {
		Set<String> aspects = new LinkedHashSet<>(then.keySet());
		aspects.addAll(now.keySet());
		return aspects.stream().filter(aspect -> !then.getOrDefault(aspect, "").equals(now.getOrDefault(aspect, "")))
				.map(aspect -> new Change(aspect, then.getOrDefault(aspect, NOT_SAID), now.getOrDefault(aspect, NOT_SAID),
						""))
				.toList();
	}
}
