package padwright.engine.seating;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.TreeSet;
import java.util.stream.IntStream;

/**
 * Finds the sets of actions after which the greatest share of the sample lies within a width, less their prices: for up
 * to two actions the best of all that there are, for more the best that go on from the best few found. Changes; for one
 * thread.
 */
final class ActionSearch {

	/** Sets that are gone on from. */
	private static final int KEPT = 16;
	/** Sets that are told in the end. */
	private static final int FOUND = 48;
	/** Single actions whose pairs are looked at first, so that most others are soon seen to be worse. */
	private static final int FIRST = 16;
	private static final int MOST_ACTIONS = 4;
	/** Sets of two or more that level hardly a rim are of no use. */
	private static final double LEAST_SCORE = 0.01;
	/** Up to so many actions a choice is the best of all over the sample. */
	static final int PROVEN = 2;

	private final ActionTable actions;
	private final LevelCount levels;
	private final Screen screen;
	private final boolean mustAct;
	private final TreeSet<ActionSet> kept = new TreeSet<>();
	private final TreeSet<ActionSet> found = new TreeSet<>();
	private double price;
	private double needed = LEAST_SCORE;
	private int[] base;
	private boolean isLifted;
	private int[] level;

	/** @param mustAct whether to do nothing is no choice, where anything can be done */
	ActionSearch(ActionTable actions, LevelCount levels, Screen screen, boolean mustAct) {
		this.mustAct = mustAct;
		this.actions = actions;
		this.levels = levels;
		this.screen = screen;
	}

	/** The best sets, best first. */
	List<ActionSet> best() {
		offerSingles();
		int[] first = IntStream.range(0, actions.count()).boxed().sorted(Comparator.comparing(one -> -level[one]))
				.limit(FIRST).mapToInt(Integer::intValue).toArray();
		forgetKept();
		for (int one : first) {
			extend(new int[] { one }, 0);
		}
		for (int one = 0; one < actions.count(); one++) {
			extend(new int[] { one }, one);
		}
		for (int more = PROVEN + 1; more <= MOST_ACTIONS; more++) {
			List<ActionSet> beam = List.copyOf(kept);
			forgetKept();
			beam.forEach(one -> extend(one.ids(), 0));
		}
		return List.copyOf(found);
	}

	/** Single actions that level most rims, best first: of use for some of the rims, where not for most. */
	List<Integer> bestSingles(int most) {
		return IntStream.range(0, level.length).filter(one -> level[one] > 0).boxed()
				.sorted(Comparator.comparing(one -> -level[one])).limit(most).toList();
	}

	private void offerSingles() {
		gather(new int[0]);
		level = new int[actions.count()];
		if (!mustAct || level.length == 0) {
			offer(new int[0], lifted().levelled(levels.all(), 0, actions.nothing()));
		}
		for (int one = 0; one < level.length; one++) {
			long candidates = screen.mayLevel(one, 1);
			level[one] = candidates == 0 ? 0 : lifted().levelled(candidates, 0, one);
			offer(new int[] { one }, level[one]);
		}
	}

	/** Offers all sets of {@code ids} and one more action from {@code from} on. */
	private void extend(int[] ids, int from) {
		gather(ids);
		for (int one = from; one < actions.count(); one++) {
			int least = (int) Math.floor((needed + price + actions.price(one)) * levels.count()) + 1;
			long candidates = screen.mayLevel(one, least);
			if (Long.bitCount(candidates) >= least) {
				int level = lifted().levelled(candidates, least, one);
				if (level >= least) {
					offer(with(ids, one), level);
				}
			}
		}
	}

	private void forgetKept() {
		kept.clear();
		needed = LEAST_SCORE;
	}

	private void gather(int[] ids) {
		base = ids;
		isLifted = false;
		price = actions.price(ids);
		screen.goOnFrom(ids);
	}

	/** The levels on top of what was gathered; only worked out where the screen lets something pass. */
	private LevelCount lifted() {
		if (!isLifted) {
			isLifted = true;
			levels.goOnFrom(actions.lifts(base));
		}
		return levels;
	}

	private static int[] with(int[] ids, int one) {
		int[] more = Arrays.copyOf(ids, ids.length + 1);
		more[ids.length] = one;
		Arrays.sort(more);
		return more;
	}

	private void offer(int[] ids, int level) {
		if (!actions.possible(ids)) {
			return;
		}
		ActionSet one = new ActionSet(ids, level, level / (double) levels.count() - actions.price(ids));
		keep(one, found, FOUND);
		if (ids.length > 0) {
			keep(one, kept, KEPT);
			// A score below is of no use any more: with those kept, all that are told in the end are found.
			needed = kept.size() < KEPT ? LEAST_SCORE : kept.last().score();
		}
	}

	private static void keep(ActionSet one, TreeSet<ActionSet> sets, int most) {
		if (sets.add(one) && sets.size() > most) {
			sets.pollLast();
		}
	}
}
