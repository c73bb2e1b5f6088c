package padwright.engine.mechanism;

import java.util.Collection;
import java.util.List;
import java.util.Set;

/**
 * What a player does at one moment; in which order does not matter.
 *
 * @param touches the touches pressed, holes under the fingers closed
 * @param half the touches pressed with the holes under the fingers half open
 * @param keys keys pressed otherwise than by a touch
 */
public record Pressing(Set<String> touches, Set<String> half, Set<String> keys) {

	/** @throws IllegalArgumentException if a touch is pressed both fully and half */
	public Pressing {
		touches = Set.copyOf(touches);
		half = Set.copyOf(half);
		keys = Set.copyOf(keys);
		Set<String> whole = touches;
		half.stream().filter(whole::contains).sorted().findFirst().ifPresent(touch -> {
			throw new IllegalArgumentException("touch " + touch + " is pressed both fully and half");
		});
	}

	public static Pressing of(Collection<String> touches) {
		return new Pressing(Set.copyOf(touches), Set.of(), Set.of());
	}

	public static Pressing of(String... touches) {
		return of(List.of(touches));
	}

	/** The same with other touches that leave half open what they cover. */
	public Pressing withHalf(String... more) {
		return new Pressing(touches, Set.of(more), keys);
	}

	/** Whether nothing is pressed at all. */
	public boolean isEmpty() {
		return touches.isEmpty() && half.isEmpty() && keys.isEmpty();
	}

	/** Whether this touch is pressed, fully or half. */
	boolean has(String touch) {
		return touches.contains(touch) || half.contains(touch);
	}
}
