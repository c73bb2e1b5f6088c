package padwright.engine.mechanism;

import java.util.ArrayList;
import java.util.Comparator;
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
	private final Guess certain;
	private final Guess possible;
	private final Set<String> undecided;

	Motion(Mechanism mechanism, Pressing pressing) {
		this.mechanism = mechanism;
		this.pressing = pressing;
		onto = mechanism.linksByDriven();
		Guess least = grown(grown(Guess.nothing()));
		Guess most = grown(least);
		int before = -1;
		while (least.moved().size() > before) {
			before = least.moved().size();
			least = grown(most);
			most = grown(least);
		}
		certain = least;
		possible = most;
		undecided = new LinkedHashSet<>(inOrder(possible.moved()).keySet());
		undecided.removeAll(certain.moved().keySet());
	}

	Map<String, List<Cause>> movedKeys() {
		return inOrder(certain.moved());
	}

	/** A key of which nothing is decided counts as at rest. */
	boolean isClosed(String key) {
		return (mechanism.rest(key) == Rest.CLOSED) != isMoved(key);
	}

	List<Clash> clashes() {
		List<Clash> clashes = new ArrayList<>();
		for (MovingKey key : mechanism.keys()) {
			if (!undecided.contains(key.name())) {
				clash(key.name()).ifPresent(clashes::add);
			}
		}
		if (!undecided.isEmpty()) {
			clashes.add(circle());
		}
		return clashes;
	}

	private boolean isMoved(String key) {
		return certain.moved().containsKey(key);
	}

	/**
	 * The least set of keys that move if what the earlier guess moves, and no more, stands against it; each with what
	 * moves it on a shortest way from the fingers.
	 */
	private Guess grown(Guess earlier) {
		Guess guess = Guess.after(earlier);
		Map<String, List<Cause>> next = next(guess, earlier);
		while (!next.isEmpty()) {
			guess.moved().putAll(next);
			next = next(guess, earlier);
		}
		return guess;
	}

	private Map<String, List<Cause>> next(Guess guess, Guess earlier) {
		Map<String, List<Cause>> next = new LinkedHashMap<>();
		for (MovingKey key : mechanism.keys()) {
			if (!guess.moved().containsKey(key.name())) {
				mover(key.name(), guess).filter(cause -> isStrong(cause) || opponents(key.name(), earlier).isEmpty())
						.ifPresent(cause -> next.put(key.name(), chain(cause, guess)));
			}
		}
		return next;
	}

	/** The strongest thing that moves a key from its rest: what holds an open key shut, a finger, another key. */
	private Optional<Cause> mover(String key, Guess guess) {
		List<KeyLink> links = onto.get(key).stream()
				.filter(link -> mechanism.leavesRest(link) && guess.acts(link)).toList();
		Optional<Cause> holding = links.stream().filter(Motion::isHolding).findFirst().map(Driven::new);
		return holding.or(() -> mechanism.push(key, pressing))
				.or(() -> links.stream().findFirst().map(Driven::new));
	}

	private static boolean isStrong(Cause cause) {
		return cause instanceof Driven driven && isHolding(driven.link());
	}

	/** What brings a key back to its rest. */
	private List<KeyLink> opponents(String key, Guess guess) {
		return onto.get(key).stream().filter(link -> !mechanism.leavesRest(link) && guess.acts(link)).toList();
	}

	private static List<Cause> chain(Cause last, Guess guess) {
		List<Cause> chain = new ArrayList<>();
		if (last instanceof Driven driven) {
			chain.addAll(guess.moved().get(driven.link().driver()));
		}
		chain.add(last);
		return chain;
	}

	/** What moves a key against what brings it back; if one of both is holding, that one wins. */
	private Optional<Clash> clash(String key) {
		Optional<Cause> mover = mover(key, certain).filter(cause -> !isStrong(cause));
		return mover.flatMap(moving -> opponents(key, certain).stream().max(Comparator.comparing(Motion::isHolding))
				.map(link -> new Clash(isHolding(link) ? Clash.Kind.HELD : Clash.Kind.OPPOSED, key,
						chain(moving, certain), chain(new Driven(link), certain))));
	}

	private static boolean isHolding(KeyLink link) {
		return link.effect() == Effect.HOLDS;
	}

	/** Every undecided key depends on another such one: following them comes back to one already met. */
	private Clash circle() {
		List<String> path = new ArrayList<>();
		List<Cause> links = new ArrayList<>();
		String key = undecided.iterator().next();
		while (!path.contains(key)) {
			path.add(key);
			KeyLink link = undecidedLink(key);
			links.add(0, new Driven(link));
			key = undecided.contains(link.driver()) ? link.driver() : link.when().orElseThrow().key();
		}
		return new Clash(Clash.Kind.CIRCULAR, key, links.subList(0, links.size() - path.indexOf(key)), List.of());
	}

	private KeyLink undecidedLink(String key) {
		return onto.get(key).stream().filter(link -> possible.acts(link) && !certain.acts(link)).findFirst()
				.orElseThrow();
	}

	private Map<String, List<Cause>> inOrder(Map<String, List<Cause>> found) {
		Map<String, List<Cause>> ordered = new LinkedHashMap<>();
		mechanism.keys().stream().map(MovingKey::name).filter(found::containsKey)
				.forEach(key -> ordered.put(key, found.get(key)));
		return ordered;
	}
}
