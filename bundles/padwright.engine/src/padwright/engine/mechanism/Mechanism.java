package padwright.engine.mechanism;

import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * The keys, holes, touches and links of an instrument.
 *
 * @param keys in the order in which answers name them
 * @param holes in the order in which answers name them
 * @param touches what the fingers press
 * @param links what the keys do to each other; no two with the same keys, effect and condition
 */
public record Mechanism(List<MovingKey> keys, List<CoveredHole> holes, List<FingerTouch> touches,
		List<KeyLink> links) {

	/** @throws IllegalArgumentException if a name or a link stands twice, or a name is unknown */
	public Mechanism {
		keys = List.copyOf(keys);
		holes = List.copyOf(holes);
		touches = List.copyOf(touches);
		links = List.copyOf(links);
		Set<String> keyNames = distinct("key", keys.stream().map(MovingKey::name).toList());
		Set<String> holeNames = distinct("hole", holes.stream().map(CoveredHole::name).toList());
		distinct("touch", touches.stream().map(FingerTouch::name).toList());
		distinct("coupling", links.stream().map(KeyLink::toString).toList());
		requireKnown("key", keyNames, Stream.of(
				holes.stream().flatMap(hole -> hole.cups().stream()).map(HoleCup::key),
				touches.stream().flatMap(touch -> touch.keys().stream()),
				links.stream().flatMap(Mechanism::keysOf)).flatMap(Function.identity()).toList());
		requireKnown("hole", holeNames, touches.stream().flatMap(touch -> touch.holes().stream()).toList());
	}

	/**
	 * What the keys and holes do.
	 *
	 * <p>
	 * A key leaves its rest if a finger or a link whose driver has left its rest moves it, unless a link brings it
	 * back; {@link Effect#HOLDS} is stronger than anything that opens. Where keys depend on each other in a circle, the
	 * answer is the well-founded one: what does not follow from the fingers does not move, and what would move only if
	 * it did not is a contradiction. After A. Van Gelder, K. A. Ross and J. S. Schlipf, "The well-founded semantics for
	 * general logic programs", Journal of the ACM 38 (1991) 620-650.
	 *
	 * @throws IllegalArgumentException if a touch or a key is unknown
	 */
	public MechanismState state(Pressing pressing) {
		return states(List.of(pressing)).get(0);
	}

	/** As {@link #state}, for many at once, which is faster. */
	public List<MechanismState> states(List<Pressing> pressings) {
		Set<String> touchNames = names(touches, FingerTouch::name);
		Set<String> keyNames = names(keys, MovingKey::name);
		Solver solver = new Solver(this);
		return pressings.stream().map(pressing -> {
			requireKnown("touch", touchNames, pressing.touches());
			requireKnown("touch", touchNames, pressing.half());
			requireKnown("key", keyNames, pressing.keys());
			return solver.state(pressing);
		}).toList();
	}

	/** The keys that no touch moves or could move through any link, conditions left aside. */
	public List<String> unreachableKeys() {
		Set<String> reached = touches.stream().flatMap(touch -> touch.keys().stream())
				.collect(Collectors.toCollection(HashSet::new));
		boolean grows = true;
		while (grows) {
			grows = reached.addAll(links.stream().filter(link -> reached.contains(link.driver()) && leavesRest(link))
					.map(KeyLink::driven).toList());
		}
		return keys.stream().map(MovingKey::name).filter(key -> !reached.contains(key)).toList();
	}

	/** Whether a link moves its driven key away from its rest, rather than keeping it there. */
	boolean leavesRest(KeyLink link) {
		return link.effect().target() != rest(link.driven());
	}

	Rest rest(String key) {
		return keys.stream().filter(each -> each.name().equals(key)).findFirst().orElseThrow().rest();
	}

	private static Stream<String> keysOf(KeyLink link) {
		return Stream.concat(Stream.of(link.driver(), link.driven()), link.when().map(KeyLink.Condition::key).stream());
	}

	private static <T> Set<String> names(List<T> things, Function<T, String> name) {
		return things.stream().map(name).collect(Collectors.toSet());
	}

	private static Set<String> distinct(String kind, List<String> names) {
		Set<String> seen = new HashSet<>();
		for (String name : names) {
			if (!seen.add(name)) {
				throw new IllegalArgumentException(kind + " " + name + " stands twice");
			}
		}
		return seen;
	}

	private static void requireKnown(String kind, Set<String> known, Collection<String> names) {
		List<String> unknown = names.stream().filter(name -> !known.contains(name)).distinct().sorted().toList();
		if (!unknown.isEmpty()) {
			throw new IllegalArgumentException("unknown " + kind + ": " + String.join(", ", unknown));
		}
	}
}
