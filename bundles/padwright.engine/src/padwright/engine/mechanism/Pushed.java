package padwright.engine.mechanism;

import java.util.Optional;

/**
 * A finger moves a key.
 *
 * @param key the key
 * @param touch by which touch; none where the key itself was named
 */
public record Pushed(String key, Optional<String> touch) implements Cause {

	/** As in {@code L2 presses A}. */
	@Override
	public String toString() {
		return touch.map(name -> name + " presses " + key).orElse(key + " is pressed");
	}
}
