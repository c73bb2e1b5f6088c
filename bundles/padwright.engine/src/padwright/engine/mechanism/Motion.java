package padwright.engine.mechanism;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Which keys move, by the alternating fixpoint; see {@link Mechanism#state}. */
final class Motion {

	private final Mechanism mechanism;
	private final Pressing pressing;
	private final Map<String, List<KeyLink>> onto;
	private final Map<String, List<Cause>> moved;
	private final Set<String> undecided;

	Motion(Mechanism mechanism, Pressing pressing) {
		this.mechanism = mechanism;
		this.pressing = pressing;
		onto = mechanism.linksByDriven();
		Map<String, List<Cause>> certain = movedIf(movedIf(Set.of()).keySet());
		Map<String, List<Cause>> possible = movedIf(certain.keySet());
		int before = -1;
		while (certain.size() > before) {
			before = certain.size();
			certain = movedIf(possible.keySet());
			possible = movedIf(certain.keySet());
		}
		moved = inOrder(certain);
		undecided = new LinkedHashSet<>(inOrder(possible).keySet());
		undecided.removeAll(moved.keySet());
	}

	Map<String, List<Cause>> movedKeys() {
		return moved;
	}

	/** A key of which nothing is decided counts as at rest. */
	boolean isClosed(String key) {
		return (mechanism.rest(key) == Rest.CLOSED) != moved.containsKey(key);
	}

	/** Keys at rest that would move but for a {@link Effect#HOLDS}. */
	Map<String, List<Cause>> heldKeys() {
		Map<String, List<Cause>> held = new LinkedHashMap<>();
		mechanism.keys().stream().map(MovingKey::name)
				.filter(key -> !moved.containsKey(key) && !undecided.contains(key) && mover(key, moved).isPresent())
				.forEach(key -> holder(key).ifPresent(link -> held.put(key, chain(new Driven(link), moved))));
		return held;
	}

	List<Conflict> conflicts() {
		List<Conflict> conflicts = new ArrayList<>();
		for (MovingKey key : mechanism.keys()) {
			if (!undecided.contains(key.name())) {
				opposition(key.name()).ifPresent(conflicts::add);
			}
		}
		circle().ifPresent(conflicts::add);
		return conflicts;
	}

	/**
	 * The least set of keys that move if exactly {@code opponents} take part in bringing keys back; each with what moves
	 * it on a shortest way from the fingers.
	 */
	private Map<String, List<Cause>> movedIf(Set<String> opponents) {
		Map<String, List<Cause>> found = new LinkedHashMap<>();
		Map<String, List<Cause>> next = step(found, opponents);
		while (!next.isEmpty()) {
			found.putAll(next);
			next = step(found, opponents);
		}
		return found;
	}

	private Map<String, List<Cause>> step(Map<String, List<Cause>> found, Set<String> opponents) {
		Map<String, List<Cause>> next = new LinkedHashMap<>();
		for (MovingKey key : mechanism.keys()) {
			if (!found.containsKey(key.name())) {
				mover(key.name(), found).filter(cause -> isStrong(cause) || !isBroughtBack(key.name(), opponents))
						.ifPresent(cause -> next.put(key.name(), chain(cause, found)));
			}
		}
		return next;
	}

	/** The strongest thing that moves a key from its rest: what holds an open key shut, a finger, another key. */
	private Optional<Cause> mover(String key, Map<String, List<Cause>> acting) {
		List<KeyLink> links = onto.get(key).stream()
				.filter(link -> mechanism.leavesRest(link) && acts(link, acting.keySet())).toList();
		Optional<Cause> held = links.stream().filter(link -> link.effect() == Effect.HOLDS).findFirst().map(Driven::new);
		return held.or(() -> mechanism.push(key, pressing))
				.or(() -> links.stream().findFirst().map(Driven::new));
	}

	private static boolean isStrong(Cause cause) {
		return cause instanceof Driven driven && driven.link().effect() == Effect.HOLDS;
	}

	private boolean isBroughtBack(String key, Set<String> acting) {
		return onto.get(key).stream().anyMatch(link -> !mechanism.leavesRest(link) && acts(link, acting));
	}

	private static boolean acts(KeyLink link, Set<String> acting) {
		return acting.contains(link.driver()) && link.when().filter(key -> !acting.contains(key)).isEmpty();
	}

	private static List<Cause> chain(Cause last, Map<String, List<Cause>> found) {
		List<Cause> chain = new ArrayList<>();
		if (last instanceof Driven driven) {
			chain.addAll(found.get(driven.link().driver()));
		}
		chain.add(last);
		return chain;
	}

	private Optional<KeyLink> holder(String key) {
		return opponents(key).stream().filter(link -> link.effect() == Effect.HOLDS).findFirst();
	}

	private List<KeyLink> opponents(String key) {
		return onto.get(key).stream()
				.filter(link -> !mechanism.leavesRest(link) && acts(link, moved.keySet())).toList();
	}

	/** What holds wins quietly over a key that opens, but not over a finger, which cannot be told to give way. */
	private Optional<Conflict> opposition(String key) {
		Optional<Cause> mover = mover(key, moved).filter(cause -> !isStrong(cause));
		Optional<KeyLink> rigid = opponents(key).stream().filter(link -> link.effect() != Effect.HOLDS).findFirst();
		Optional<KeyLink> holder = holder(key).filter(link -> mover.filter(Pushed.class::isInstance).isPresent());
		if (mover.isEmpty()) {
			return Optional.empty();
		}
		List<Cause> moving = chain(mover.get(), moved);
		return rigid.map(link -> new Conflict(Conflict.Kind.OPPOSED, key, moving, chain(new Driven(link), moved)))
				.or(() -> holder.map(link -> new Conflict(Conflict.Kind.HELD, key, moving,
						chain(new Driven(link), moved))));
	}

	/** Every undecided key depends on another such one: following them comes back to one already met. */
	private Optional<Conflict> circle() {
		if (undecided.isEmpty()) {
			return Optional.empty();
		}
		List<String> path = new ArrayList<>();
		List<Cause> links = new ArrayList<>();
		String key = undecided.iterator().next();
		while (!path.contains(key)) {
			path.add(key);
			KeyLink link = undecidedLink(key);
			links.add(new Driven(link));
			key = undecided.contains(link.driver()) ? link.driver() : link.when().orElseThrow();
		}
		List<Cause> circle = new ArrayList<>(links.subList(path.indexOf(key), links.size()));
		Collections.reverse(circle);
		return Optional.of(new Conflict(Conflict.Kind.CIRCULAR, key, circle, List.of()));
	}

	private KeyLink undecidedLink(String key) {
		Set<String> perhaps = new HashSet<>(moved.keySet());
		perhaps.addAll(undecided);
		return onto.get(key).stream().filter(link -> acts(link, perhaps) && !acts(link, moved.keySet())).findFirst()
				.orElseThrow();
	}

	private Map<String, List<Cause>> inOrder(Map<String, List<Cause>> found) {
		Map<String, List<Cause>> ordered = new LinkedHashMap<>();
		mechanism.keys().stream().map(MovingKey::name).filter(found::containsKey)
				.forEach(key -> ordered.put(key, found.get(key)));
		return ordered;
	}
}
