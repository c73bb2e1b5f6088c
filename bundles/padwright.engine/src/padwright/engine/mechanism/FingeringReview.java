package padwright.engine.mechanism;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;

/**
 * What all fingerings of an instrument show about it.
 *
 * @param states by the name of each fingering what the mechanism does, as given
 * @param unusedKeys keys that no fingering moves, in the order of the mechanism
 * @param unusedTouches touches that no fingering presses, in the order of the mechanism
 * @param idle fingerings that move no key and cover no hole though a higher note less than a fifth above the lowest
 *     does, as given
 * @param alike fingerings with the same open and half open holes though their notes differ by less than a whole tone;
 *     as given; none where no hole is known
 */
public record FingeringReview(Map<String, MechanismState> states, List<String> unusedKeys, List<String> unusedTouches,
		List<String> idle, List<Alike> alike) {

	/**
	 * Partials of one air column up to the eighth are further apart than this, eighth over seventh being the least with
	 * 231 cents (1200 · log2(8/7)): nearer notes must differ in their holes.
	 */
	public static final int WHOLE_TONE = 200;

	/** A bound of ours, no source: on the instruments that ship the open note lies at least a major seventh up. */
	private static final int FIFTH = 700;

	/**
	 * Two notes for which the same holes are open.
	 *
	 * @param first the fingering given first
	 * @param second the other one
	 */
	public record Alike(String first, String second) {
	}

	/** @throws IllegalArgumentException if two fingerings have one name, or one presses what is unknown */
	public static FingeringReview of(Mechanism mechanism, List<TriedFingering> fingerings) {
		List<MechanismState> solved = mechanism.states(fingerings.stream().map(TriedFingering::pressing).toList());
		Map<String, MechanismState> states = new LinkedHashMap<>();
		for (int i = 0; i < fingerings.size(); i++) {
			if (states.put(fingerings.get(i).name(), solved.get(i)) != null) {
				throw new IllegalArgumentException("fingering " + fingerings.get(i).name() + " stands twice");
			}
		}
		return new FingeringReview(states, unusedKeys(mechanism, states.values()),
				unusedTouches(mechanism, fingerings), idle(mechanism, fingerings, states),
				mechanism.holes().isEmpty() ? List.of() : alike(fingerings, states));
	}

	private static List<String> unusedKeys(Mechanism mechanism, Collection<MechanismState> states) {
		Set<String> used = new HashSet<>();
		states.forEach(state -> used.addAll(state.moved().keySet()));
		return mechanism.keys().stream().map(MovingKey::name).filter(key -> !used.contains(key)).toList();
	}

	private static List<String> unusedTouches(Mechanism mechanism, List<TriedFingering> fingerings) {
		return mechanism.touches().stream().map(FingerTouch::name)
				.filter(touch -> fingerings.stream().noneMatch(fingering -> fingering.pressing().has(touch))).toList();
	}

	/**
	 * With all fingers off the column of air is about as short as it can be. Many instruments have a note for that, but
	 * it lies high above the lowest one.
	 */
	private static List<String> idle(Mechanism mechanism, List<TriedFingering> fingerings,
			Map<String, MechanismState> states) {
		MechanismState atRest = mechanism.state(Pressing.of());
		Predicate<TriedFingering> isIdle = fingering -> states.get(fingering.name()).equals(atRest);
		List<Integer> others = fingerings.stream().filter(isIdle.negate()).flatMapToInt(each -> each.cents().stream())
				.boxed().sorted().toList();
		return fingerings.stream().filter(isIdle).filter(fingering -> others.stream()
				.anyMatch(other -> other < others.get(0) + FIFTH && fingering.cents().orElse(other) < other))
				.map(TriedFingering::name).toList();
	}

	private static List<Alike> alike(List<TriedFingering> fingerings, Map<String, MechanismState> states) {
		List<Alike> alike = new ArrayList<>();
		for (TriedFingering second : fingerings) {
			for (TriedFingering first : before(second, fingerings)) {
				if (areNear(first, second)
						&& states.get(first.name()).holes().equals(states.get(second.name()).holes())) {
					alike.add(new Alike(first.name(), second.name()));
				}
			}
		}
		return alike;
	}

	private static boolean areNear(TriedFingering first, TriedFingering second) {
		if (first.cents().isEmpty() || second.cents().isEmpty()) {
			return false;
		}
		int apart = Math.abs(first.cents().getAsInt() - second.cents().getAsInt());
		return apart > 0 && apart < WHOLE_TONE;
	}

	private static List<TriedFingering> before(TriedFingering fingering, List<TriedFingering> fingerings) {
		return fingerings.subList(0, fingerings.indexOf(fingering));
	}
}
