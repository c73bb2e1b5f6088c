package padwright.workup.compare;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import padwright.workup.service.ServicePlan;
import padwright.workup.solve.KeySolution;
import padwright.workup.solve.PlanSolution;

/**
 * Two services of one instrument, key by key.
 *
 * @param keys that both plans have, in the order of the new one
 * @param onlyThen labels of keys that only the old plan has
 * @param onlyNow labels of keys that only the new plan has
 */
public record PlanComparison(ServicePlan then, ServicePlan now, List<KeyComparison> keys, List<String> onlyThen,
		List<String> onlyNow) {

	public PlanComparison {
		keys = List.copyOf(keys);
		onlyThen = List.copyOf(onlyThen);
		onlyNow = List.copyOf(onlyNow);
	}

	/** Compares the first row of each key. */
	public static PlanComparison of(PlanSolution then, PlanSolution now) {
		Map<String, KeySolution> earlier = byName(then);
		List<KeyComparison> keys = new ArrayList<>();
		List<String> onlyNow = new ArrayList<>();
		byName(now).forEach((name, key) -> Optional.ofNullable(earlier.remove(name)).ifPresentOrElse(
				before -> keys.add(new KeyComparison(name, label(key), KeyAspects.changes(before, key))),
				() -> onlyNow.add(label(key))));
		return new PlanComparison(then.plan(), now.plan(), keys,
				earlier.values().stream().map(PlanComparison::label).toList(), onlyNow);
	}

	private static Map<String, KeySolution> byName(PlanSolution solution) {
		Map<String, KeySolution> keys = new LinkedHashMap<>();
		solution.keys().stream().filter(key -> key.job().key().isPresent())
				.forEach(key -> keys.putIfAbsent(key.job().name(), key));
		return keys;
	}

	private static String label(KeySolution key) {
		return key.job().key().orElseThrow().label();
	}

	/** Labels of the keys of which both plans say the same. */
	public List<String> unchanged() {
		return keys.stream().filter(key -> key.changes().isEmpty()).map(KeyComparison::label).toList();
	}

	/** Whether the plans say that they are of one instrument: the same serial, or one says none. */
	public boolean sameInstrument() {
		String old = then.plan().getSerial();
		String current = now.plan().getSerial();
		return old == null || current == null || old.equals(current);
	}
}
