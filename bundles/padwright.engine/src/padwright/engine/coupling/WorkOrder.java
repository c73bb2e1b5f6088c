package padwright.engine.coupling;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Topological order of keys, driven before driver; among those that are free, the one given first comes first. */
final class WorkOrder {

	private WorkOrder() {
	}

	/** @throws CircularCouplingException if keys drive each other in a circle */
	static List<String> of(List<String> keys, Map<String, List<String>> drivenBy) {
		Set<String> done = new LinkedHashSet<>();
		Set<String> waiting = new LinkedHashSet<>(keys);
		while (!waiting.isEmpty()) {
			String next = waiting.stream().filter(key -> done.containsAll(drivenBy.get(key))).findFirst()
					.orElseThrow(() -> new CircularCouplingException(circleIn(waiting, drivenBy)));
			waiting.remove(next);
			done.add(next);
		}
		return List.copyOf(done);
	}

	/** Every waiting key drives another that waits: following them must come back to one already met. */
	private static List<String> circleIn(Set<String> waiting, Map<String, List<String>> drivenBy) {
		List<String> path = new ArrayList<>();
		String key = waiting.iterator().next();
		while (!path.contains(key)) {
			path.add(key);
			key = drivenBy.get(key).stream().filter(waiting::contains).findFirst().orElseThrow();
		}
		return List.copyOf(path.subList(path.indexOf(key), path.size()));
	}
}
