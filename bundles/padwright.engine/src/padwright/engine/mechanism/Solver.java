package padwright.engine.mechanism;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Prepares a mechanism once to be solved for many fingerings; see {@link Mechanism#state}. */
final class Solver {

	private final Mechanism mechanism;
	private final Map<String, Integer> numbers = new HashMap<>();
	private final List<List<NumberedLink>> leaving = new ArrayList<>();
	private final List<List<NumberedLink>> returning = new ArrayList<>();

	Solver(Mechanism mechanism) {
		this.mechanism = mechanism;
		mechanism.keys().forEach(key -> {
			numbers.put(key.name(), numbers.size());
			leaving.add(new ArrayList<>());
			returning.add(new ArrayList<>());
		});
		for (int number = 0; number < mechanism.links().size(); number++) {
			NumberedLink link = numbered(number);
			(link.isLeaving() ? leaving : returning).get(link.driven()).add(link);
		}
	}

	private NumberedLink numbered(int number) {
		KeyLink link = mechanism.links().get(number);
		return new NumberedLink(number, numbers.get(link.driver()), numbers.get(link.driven()),
				link.when().map(on -> numbers.get(on.key())).orElse(Guess.NOTHING),
				link.when().map(KeyLink.Condition::isMoved).orElse(true),
				link.effect().target() != rest(numbers.get(link.driven())), link.effect() == Effect.HOLDS);
	}

	MechanismState state(Pressing pressing) {
		Motion motion = new Motion(this, pushes(pressing));
		return new MechanismState(motion.movedKeys(), holes(pressing, motion), motion.clashes());
	}

	int count() {
		return mechanism.keys().size();
	}

	String name(int key) {
		return mechanism.keys().get(key).name();
	}

	int number(String key) {
		return numbers.get(key);
	}

	Rest rest(int key) {
		return mechanism.keys().get(key).rest();
	}

	KeyLink link(int number) {
		return mechanism.links().get(number);
	}

	/** The links that move a key away from its rest, in their order. */
	List<NumberedLink> leaving(int key) {
		return leaving.get(key);
	}

	/** The links that bring a key back to its rest, in their order. */
	List<NumberedLink> returning(int key) {
		return returning.get(key);
	}

	/** By key what directly moves it, the touch that stands first; null for nothing. */
	private Pushed[] pushes(Pressing pressing) {
		Pushed[] pushes = new Pushed[count()];
		pressing.keys().forEach(key -> pushes[numbers.get(key)] = new Pushed(key, Optional.empty()));
		for (int i = mechanism.touches().size() - 1; i >= 0; i--) {
			FingerTouch touch = mechanism.touches().get(i);
			if (pressing.has(touch.name())) {
				touch.keys().forEach(key -> pushes[numbers.get(key)] = new Pushed(key, Optional.of(touch.name())));
			}
		}
		return pushes;
	}

	private Map<String, HoleState> holes(Pressing pressing, Motion motion) {
		Map<String, HoleState> fingers = fingers(pressing);
		Map<String, HoleState> states = new LinkedHashMap<>();
		mechanism.holes().forEach(hole -> states.put(hole.name(),
				state(hole, fingers.getOrDefault(hole.name(), HoleState.OPEN), motion)));
		return states;
	}

	private HoleState state(CoveredHole hole, HoleState finger, Motion motion) {
		if (hole.cups().isEmpty()) {
			return finger;
		}
		HoleState state = HoleState.OPEN;
		for (HoleCup cup : hole.cups()) {
			if (motion.isClosed(numbers.get(cup.key()))) {
				HoleState under = cup.isPerforated() && finger != HoleState.CLOSED ? HoleState.HALF : HoleState.CLOSED;
				state = under.compareTo(state) > 0 ? under : state;
			}
		}
		return state;
	}

	/** How far fingers cover the holes that they touch. */
	private Map<String, HoleState> fingers(Pressing pressing) {
		Map<String, HoleState> fingers = new HashMap<>();
		mechanism.touches().stream().filter(touch -> pressing.has(touch.name())).forEach(touch -> {
			HoleState covered = pressing.half().contains(touch.name()) ? HoleState.HALF : HoleState.CLOSED;
			touch.holes().forEach(hole -> fingers.merge(hole, covered,
					(one, other) -> one.compareTo(other) > 0 ? one : other));
		});
		return fingers;
	}
}
