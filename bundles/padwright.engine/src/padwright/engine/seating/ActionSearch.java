package padwright.engine.seating;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.TreeSet;
import java.util.stream.IntStream;

import padwright.engine.evidence.LikelyStiffness;

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
	private final long[] set;
	private final boolean mustAct;
	private final List<long[]> levelled = new ArrayList<>();
	private final TreeSet<ActionSet> kept = new TreeSet<>();
	private final TreeSet<ActionSet> found = new TreeSet<>();
	private final double[][] lifts = new double[LikelyStiffness.NODES][];
	private final double[] waves = new double[LiftWaves.COUNT];
	private double price;
	private int[] base;
	private boolean isLifted;
	private int[] level;

	/** @param mustAct whether to do nothing is no choice, where anything can be done */
	ActionSearch(ActionTable actions, LevelCount levels, Screen screen, boolean mustAct) {
		this.mustAct = mustAct;
		this.actions = actions;
		this.levels = levels;
		this.screen = screen;
		set = new long[screen.words()];
	}

	/** The best sets, best first. */
	List<ActionSet> best() {
		offerSingles();
		int[] first = IntStream.range(0, actions.count()).boxed().sorted(Comparator.comparing(one -> -level[one]))
				.limit(FIRST).mapToInt(Integer::intValue).toArray();
		kept.clear();
		for (int one : first) {
			extend(new int[] { one }, 0);
		}
		for (int one = 0; one < actions.count(); one++) {
			extend(new int[] { one }, one);
		}
		keepLevelled();
		for (int more = PROVEN + 1; more <= MOST_ACTIONS; more++) {
			List<ActionSet> beam = List.copyOf(kept);
			kept.clear();
			beam.forEach(one -> extend(one.ids(), 0));
			keepLevelled();
		}
		return List.copyOf(found);
	}

	/** What nothing, single actions and the best sets found do to the rims. */
	LevelTable table() {
		return new LevelTable(levelled, levels.count());
	}

	private void keepLevelled() {
		for (ActionSet one : kept) {
			gather(one.ids());
			levelled.add(lifted().levelled(actions.nothing()));
		}
	}

	private void offerSingles() {
		gather(new int[0]);
		level = new int[actions.count()];
		long[] byNothing = lifted().levelled(actions.nothing());
		levelled.add(byNothing);
		if (!mustAct || level.length == 0) {
			offer(new int[0], count(byNothing));
		}
		for (int one = 0; one < level.length; one++) {
			if (screen.mayLevel(waves, actions.waves(one), 1, set) > 0) {
				long[] byOne = lifted().levelled(one);
				levelled.add(byOne);
				level[one] = count(byOne);
			}
			offer(new int[] { one }, level[one]);
		}
	}

	private static int count(long[] set) {
		return Arrays.stream(set).mapToInt(Long::bitCount).sum();
	}

	/** Offers all sets of {@code ids} and one more action from {@code from} on. */
	private void extend(int[] ids, int from) {
		gather(ids);
		for (int one = from; one < actions.count(); one++) {
			int least = (int) Math.floor((needed() + price + actions.price(one)) * levels.count()) + 1;
			int candidates = screen.mayLevel(waves, actions.waves(one), least, set);
			if (candidates >= 0) {
				int level = lifted().levelled(set, candidates, least, one);
				if (level >= least) {
					offer(with(ids, one), level);
				}
			}
		}
	}

	/** A score that is of no use any more: with those kept, all that are told in the end are found. */
	private double needed() {
		return kept.size() < KEPT ? LEAST_SCORE : kept.last().score();
	}

	private void gather(int[] ids) {
		base = ids;
		isLifted = false;
		price = actions.price(ids);
		Arrays.fill(waves, 0);
		for (int id : ids) {
			addTo(waves, actions.waves(id));
		}
	}

	/** The levels on top of what was gathered; only worked out where the screen lets something pass. */
	private LevelCount lifted() {
		if (!isLifted) {
			isLifted = true;
			for (int node = 0; node < lifts.length; node++) {
				lifts[node] = actions.lift(base, node);
			}
			levels.goOnFrom(lifts);
		}
		return levels;
	}

	private static void addTo(double[] sums, double[] values) {
		for (int i = 0; i < sums.length; i++) {
			sums[i] += values[i];
		}
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
		}
	}

	private static void keep(ActionSet one, TreeSet<ActionSet> sets, int most) {
		if (sets.add(one) && sets.size() > most) {
			sets.pollLast();
		}
	}
}
