package padwright.engine.mechanism;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Which keys move if an earlier guess tells what stands against moving.
 *
 * @param moved each moved key with what moves it, from the finger on
 * @param before the keys that move in the earlier guess: links that act unless such a key moves do not act
 */
record Guess(Map<String, List<Cause>> moved, Set<String> before) {

	static Guess nothing() {
		return new Guess(Map.of(), Set.of());
	}

	/** One that keys will be added to. */
	static Guess after(Guess earlier) {
		return new Guess(new LinkedHashMap<>(), earlier.moved().keySet());
	}

	boolean acts(KeyLink link) {
		return moved.containsKey(link.driver()) && link.when().filter(on -> !isMet(on)).isEmpty();
	}

	private boolean isMet(KeyLink.Condition on) {
		return on.isMoved() ? moved.containsKey(on.key()) : !before.contains(on.key());
	}
}
