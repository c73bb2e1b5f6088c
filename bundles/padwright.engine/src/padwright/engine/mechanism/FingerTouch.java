package padwright.engine.mechanism;

import java.util.List;

/**
 * What a finger presses.
 *
 * @param name unlike that of any other touch
 * @param keys the keys it moves directly
 * @param holes the holes that the finger covers with it: those without a cup, or the openings of perforated cups
 */
public record FingerTouch(String name, List<String> keys, List<String> holes) {

	/** @throws IllegalArgumentException if the name is blank, or it neither moves nor covers anything */
	public FingerTouch {
		keys = List.copyOf(keys);
		holes = List.copyOf(holes);
		if (name.isBlank()) {
			throw new IllegalArgumentException("a touch needs a name");
		}
		if (keys.isEmpty() && holes.isEmpty()) {
			throw new IllegalArgumentException("touch " + name + " moves no key and covers no hole");
		}
	}

	/** A touch that moves keys and covers no hole. */
	public static FingerTouch moving(String name, String... keys) {
		return new FingerTouch(name, List.of(keys), List.of());
	}

	/** A finger on a hole. */
	public static FingerTouch covering(String name, String... holes) {
		return new FingerTouch(name, List.of(), List.of(holes));
	}
}
