package padwright.engine.mechanism;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/** All states of a mechanism that bear themselves out, by trying every set of moved keys; no line shared with it. */
final class ExhaustiveMechanism {

	private final Mechanism mechanism;
	private final Set<String> pressed;

	ExhaustiveMechanism(Mechanism mechanism, Set<String> pressedKeys) {
		this.mechanism = mechanism;
		this.pressed = pressedKeys;
	}

	/**
	 * Every set of keys that is exactly what follows from the fingers step by step once that set decides which keys are
	 * brought back.
	 */
	List<Set<String>> stableStates() {
		List<Set<String>> stable = new ArrayList<>();
		int count = mechanism.keys().size();
		for (int bits = 0; bits < 1 << count; bits++) {
			Set<String> guess = new TreeSet<>();
			for (int i = 0; i < count; i++) {
				if ((bits >> i & 1) == 1) {
					guess.add(mechanism.keys().get(i).name());
				}
			}
			if (grown(guess).equals(guess)) {
				stable.add(guess);
			}
		}
		return stable;
	}

	private Set<String> grown(Set<String> guess) {
		Set<String> moved = new TreeSet<>();
		for (int round = 0; round <= mechanism.keys().size(); round++) {
			for (MovingKey key : mechanism.keys()) {
				if (moves(key, moved, guess)) {
					moved.add(key.name());
				}
			}
		}
		return moved;
	}

	private boolean moves(MovingKey key, Set<String> moved, Set<String> guess) {
		boolean isPressed = pressed.contains(key.name());
		if (key.rest() == Rest.OPEN) {
			return acts(key, Effect.HOLDS, moved, guess)
					|| (isPressed || acts(key, Effect.CLOSES, moved, guess)) && !acts(key, Effect.OPENS, guess, guess);
		}
		return (isPressed || acts(key, Effect.OPENS, moved, guess))
				&& !acts(key, Effect.CLOSES, guess, guess) && !acts(key, Effect.HOLDS, guess, guess);
	}

	private boolean acts(MovingKey key, Effect effect, Set<String> moved, Set<String> guess) {
		for (KeyLink link : mechanism.links()) {
			if (link.driven().equals(key.name()) && link.effect() == effect && moved.contains(link.driver())
					&& (link.when().isEmpty() || (link.when().get().isMoved() ? moved.contains(link.when().get().key())
							: !guess.contains(link.when().get().key())))) {
				return true;
			}
		}
		return false;
	}
}
