package padwright.engine.mechanism;

import java.math.BigDecimal;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

import padwright.engine.length.Length;

/**
 * What a finger feels when it presses one touch alone. Friction is left out, and where on the key the finger lies:
 * force and travel are those at the pads of the keys that the touch moves.
 *
 * @param force sum of the springs that it works against, each with its force times the ratios on the way to it, since
 *     over a small travel the work is the same at both ends (principle of virtual work); where several ways lead to a
 *     key, the one with the greatest ratio counts. In the unit of the springs
 * @param unweighed moved keys whose spring is not known; they are not in the force. In the order of the mechanism
 * @param lostMotion for each moved key how far the touch goes before the key follows on the shortest way
 */
public record TouchFeel(BigDecimal force, Set<String> unweighed, Map<String, Length> lostMotion) {

	/**
	 * The feel of a touch.
	 *
	 * @param springs the force at the pad that moves each key against its spring, in any unit; a key may be missing
	 * @throws IllegalArgumentException if the touch is unknown
	 */
	public static TouchFeel of(Mechanism mechanism, String touch, Map<String, BigDecimal> springs) {
		Set<String> moved = mechanism.state(Pressing.of(touch)).moved().keySet();
		List<Way> ways = mechanism.touches().stream().filter(each -> each.name().equals(touch))
				.flatMap(each -> each.keys().stream()).filter(moved::contains)
				.flatMap(key -> Way.from(key, mechanism, moved).stream()).toList();
		Map<String, BigDecimal> ratios = new LinkedHashMap<>();
		Map<String, Length> lost = new LinkedHashMap<>();
		moved.forEach(key -> ways.stream().filter(way -> way.last().equals(key)).forEach(way -> {
			ratios.merge(key, way.ratio(), BigDecimal::max);
			lost.merge(key, way.lostMotion(), TouchFeel::shorter);
		}));
		return new TouchFeel(force(ratios, springs), unweighed(moved, springs.keySet()), lost);
	}

	private static BigDecimal force(Map<String, BigDecimal> ratios, Map<String, BigDecimal> springs) {
		return ratios.entrySet().stream().filter(key -> springs.containsKey(key.getKey()))
				.map(key -> key.getValue().multiply(springs.get(key.getKey())))
				.reduce(BigDecimal.ZERO, BigDecimal::add);
	}

	private static Set<String> unweighed(Set<String> moved, Set<String> weighed) {
		Set<String> unweighed = new LinkedHashSet<>(moved);
		unweighed.removeAll(new HashSet<>(weighed));
		return unweighed;
	}

	private static Length shorter(Length one, Length other) {
		return other.isShorterThan(one) ? other : one;
	}
}
