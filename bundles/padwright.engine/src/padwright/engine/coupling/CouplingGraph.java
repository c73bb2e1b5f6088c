package padwright.engine.coupling;

import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

import padwright.engine.length.Length;

/**
 * The keys of an instrument and which closes which; without circles.
 *
 * @param keys names, all different, in the order the technician wants to see them
 * @param couplings at most one for each pair of keys
 */
public record CouplingGraph(List<String> keys, List<Coupling> couplings) {

	/**
	 * @throws IllegalArgumentException if a key or a pair stands twice or a coupling names an unknown key
	 * @throws CircularCouplingException if keys close each other in a circle
	 */
	public CouplingGraph {
		keys = List.copyOf(keys);
		couplings = List.copyOf(couplings);
		requireDistinctKeys(keys);
		requireKnownPairs(keys, couplings);
		WorkOrder.of(keys, drivenByKey(keys, couplings));
	}

	/**
	 * All keys in the order in which to regulate them: every driven key before its drivers, otherwise as given. Work
	 * on a key never upsets one that was done before it.
	 */
	public List<String> orderOfWork() {
		return WorkOrder.of(keys, drivenByKey(keys, couplings));
	}

	/** The couplings in the order in which to regulate them: by their driver in {@link #orderOfWork()}. */
	public List<Coupling> couplingsInOrderOfWork() {
		return orderOfWork().stream().flatMap(key -> couplingsOf(key).stream()).toList();
	}

	/** The couplings through which a key closes others, as given. */
	public List<Coupling> couplingsOf(String driver) {
		return couplings.stream().filter(coupling -> coupling.driver().equals(driver)).toList();
	}

	/** All keys that go down with {@code key}, through chains too, without the key itself; in the order given. */
	public Set<String> closedBy(String key) {
		Set<String> closed = new HashSet<>();
		collectClosedBy(key, closed);
		return keys.stream().filter(closed::contains).collect(Collectors.toCollection(LinkedHashSet::new));
	}

	/**
	 * Where light will show after the stack under one driven key changed; see {@link #upsets(Map)}.
	 *
	 * @param change how much thicker its contents became (full shims, mean lift), negative if thinner
	 */
	public List<Upset> upset(String driven, Length change) {
		return upsets(Map.of(driven, change));
	}

	/**
	 * Where light will show when each driver is pressed after the stacks under some keys changed, if all was regulated
	 * before. A driver stops with the first pad that meets its rim, its own or one it closes, through chains too; every
	 * other pad that goes down with it stays open by the difference.
	 *
	 * @param changes for each changed key how much thicker its contents became, negative if thinner
	 * @return by driver and then by key, both as given; only light above zero
	 * @throws IllegalArgumentException if a key is unknown
	 */
	public List<Upset> upsets(Map<String, Length> changes) {
		return upsets(changes, Set.of());
	}

	/**
	 * The same where some keys are levers without a pad of their own.
	 *
	 * @throws IllegalArgumentException if a key is unknown
	 */
	public List<Upset> upsets(Map<String, Length> changes, Set<String> levers) {
		requireKnown(changes.keySet());
		return keys.stream().flatMap(driver -> Upset.under(driver, closedBy(driver), changes, levers).stream())
				.toList();
	}

	/** @throws IllegalArgumentException if one of the names is not a key */
	public void requireKnown(Set<String> names) {
		List<String> unknown = names.stream().filter(name -> !keys.contains(name)).sorted().toList();
		if (!unknown.isEmpty()) {
			throw new IllegalArgumentException("unknown keys: " + String.join(", ", unknown));
		}
	}

	private void collectClosedBy(String key, Set<String> closed) {
		for (Coupling coupling : couplingsOf(key)) {
			if (closed.add(coupling.driven())) {
				collectClosedBy(coupling.driven(), closed);
			}
		}
	}

	private static Map<String, List<String>> drivenByKey(List<String> keys, List<Coupling> couplings) {
		Map<String, List<String>> driven = new LinkedHashMap<>();
		for (String key : keys) {
			driven.put(key, couplings.stream().filter(coupling -> coupling.driver().equals(key))
					.map(Coupling::driven).toList());
		}
		return driven;
	}

	private static void requireDistinctKeys(List<String> keys) {
		Set<String> seen = new HashSet<>();
		for (String key : keys) {
			if (!seen.add(key)) {
				throw new IllegalArgumentException("key " + key + " stands twice");
			}
		}
	}

	private static void requireKnownPairs(List<String> keys, List<Coupling> couplings) {
		Set<String> seen = new HashSet<>();
		for (Coupling coupling : couplings) {
			if (!keys.contains(coupling.driver()) || !keys.contains(coupling.driven())) {
				throw new IllegalArgumentException("coupling " + coupling + " names an unknown key");
			}
			if (!seen.add(coupling.toString())) {
				throw new IllegalArgumentException("coupling " + coupling + " stands twice");
			}
		}
	}
}
