package padwright.engine.mechanism;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Which keys move, by the alternating fixpoint; see {@link Mechanism#state}. */
final class Motion {

	private final Solver solver;
	private final Pushed[] pushes;
	private final Guess certain;
	private final Guess possible;

	/** @param pushes by key what directly moves it, or null */
	Motion(Solver solver, Pushed[] pushes) {
		this.solver = solver;
		this.pushes = pushes;
		Guess least = grown(grown(Guess.after(new boolean[pushes.length])));
		Guess most = grown(least);
		int before = -1;
		while (least.count() > before) {
			before = least.count();
			least = grown(most);
			most = grown(least);
		}
		certain = least;
		possible = most;
	}

	/** A key of which nothing is decided counts as at rest. */
	boolean isClosed(int key) {
		return (solver.rest(key) == Rest.CLOSED) != certain.moved()[key];
	}

	Map<String, List<Cause>> movedKeys() {
		Map<String, List<Cause>> moved = new LinkedHashMap<>();
		for (int key = 0; key < solver.count(); key++) {
			if (certain.moved()[key]) {
				moved.put(solver.name(key), chain(key, certain.causes()[key]));
			}
		}
		return moved;
	}

	List<Clash> clashes() {
		List<Clash> clashes = new ArrayList<>();
		int undecided = Guess.NOTHING;
		for (int key = solver.count() - 1; key >= 0; key--) {
			if (isUndecided(key)) {
				undecided = key;
			} else {
				clash(key).ifPresent(clash -> clashes.add(0, clash));
			}
		}
		if (undecided != Guess.NOTHING) {
			clashes.add(circle(undecided));
		}
		return clashes;
	}

	private boolean isUndecided(int key) {
		return possible.moved()[key] && !certain.moved()[key];
	}

	/**
	 * The least set of keys that move if what the earlier guess moves, and no more, stands against it; each with what
	 * moves it on a shortest way from the fingers.
	 */
	private Guess grown(Guess earlier) {
		Guess guess = Guess.after(earlier.moved());
		boolean grows = true;
		while (grows) {
			grows = false;
			int[] next = next(guess, earlier);
			for (int key = 0; key < next.length; key++) {
				if (next[key] != Guess.NOTHING) {
					guess.moved()[key] = true;
					guess.causes()[key] = next[key];
					grows = true;
				}
			}
		}
		return guess;
	}

	/** What moves each key that does not move yet. */
	private int[] next(Guess guess, Guess earlier) {
		int[] next = new int[solver.count()];
		for (int key = 0; key < next.length; key++) {
			int cause = guess.moved()[key] ? Guess.NOTHING : mover(key, guess);
			boolean isMoving = cause != Guess.NOTHING && (isHolding(cause) || opponent(key, earlier).isEmpty());
			next[key] = isMoving ? cause : Guess.NOTHING;
		}
		return next;
	}

	/** The strongest thing that moves a key from its rest: what holds an open key shut, a finger, another key. */
	private int mover(int key, Guess guess) {
		int first = Guess.NOTHING;
		for (NumberedLink link : solver.leaving(key)) {
			if (guess.acts(link)) {
				if (link.isHolding()) {
					return link.number();
				}
				first = first == Guess.NOTHING ? link.number() : first;
			}
		}
		return pushes[key] == null ? first : Guess.FINGER;
	}

	private boolean isHolding(int cause) {
		return cause >= 0 && solver.link(cause).effect() == Effect.HOLDS;
	}

	/** What brings a key back to its rest, first what holds it. */
	private Optional<NumberedLink> opponent(int key, Guess guess) {
		NumberedLink found = null;
		for (NumberedLink link : solver.returning(key)) {
			if ((found == null || link.isHolding() && !found.isHolding()) && guess.acts(link)) {
				found = link;
			}
		}
		return Optional.ofNullable(found);
	}

	/** From the finger on to what moves a key or brings it back. */
	private List<Cause> chain(int key, int cause) {
		LinkedList<Cause> chain = new LinkedList<>();
		int acted = key;
		int by = cause;
		while (by >= 0) {
			KeyLink link = solver.link(by);
			chain.addFirst(new Driven(link));
			acted = solver.number(link.driver());
			by = certain.causes()[acted];
		}
		chain.addFirst(pushes[acted]);
		return chain;
	}

	/** What moves a key against what brings it back; if one of both is holding, that one wins. */
	private Optional<Clash> clash(int key) {
		int mover = mover(key, certain);
		if (mover == Guess.NOTHING || isHolding(mover)) {
			return Optional.empty();
		}
		return opponent(key, certain).map(link -> new Clash(
				link.isHolding() ? Clash.Kind.HELD : Clash.Kind.OPPOSED, solver.name(key), chain(key, mover),
				chain(key, link.number())));
	}

	/** Every undecided key depends on another such one: following them comes back to one already met. */
	private Clash circle(int undecided) {
		List<Integer> path = new ArrayList<>();
		LinkedList<Cause> links = new LinkedList<>();
		int key = undecided;
		while (!path.contains(key)) {
			path.add(key);
			NumberedLink link = undecidedLink(key);
			links.addFirst(new Driven(solver.link(link.number())));
			key = isUndecided(link.driver()) ? link.driver() : link.condition();
		}
		return new Clash(Clash.Kind.CIRCULAR, solver.name(key),
				links.subList(0, links.size() - path.indexOf(key)), List.of());
	}

	private NumberedLink undecidedLink(int key) {
		List<NumberedLink> onto = new ArrayList<>(solver.leaving(key));
		onto.addAll(solver.returning(key));
		return onto.stream().filter(link -> possible.acts(link) && !certain.acts(link)).findFirst().orElseThrow();
	}
}
