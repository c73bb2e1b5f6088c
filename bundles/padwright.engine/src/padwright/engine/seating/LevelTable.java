package padwright.engine.seating;

import java.util.Arrays;
import java.util.Collection;
import java.util.List;

/**
 * Which sets of actions level which rims, as bits. The even rims choose and the odd ones judge, so that what is known of
 * a few rims is not taken for more than it is.
 */
final class LevelTable {

	private static final long EVEN = 0x5555555555555555L;

	private final List<long[]> levelled;
	private final int rims;

	/** @param sets of actions, at least one */
	LevelTable(Collection<int[]> sets, LevelCount levels, ActionTable actions) {
		rims = levels.count();
		levelled = sets.stream().map(set -> {
			levels.goOnFrom(actions.lifts(set));
			return levels.levelled(actions.nothing());
		}).toList();
	}

	/** The chance to be level where it is known which of the groups a rim is of, and done what is best for it. */
	double chance(List<long[]> groups) {
		int level = 0;
		for (long[] group : groups) {
			level += both(best(group), group, ~EVEN);
		}
		return level / (double) (rims / 2);
	}

	/** The share of rims that something levels. */
	double shareOfAny() {
		long[] any = new long[levelled.get(0).length];
		levelled.forEach(set -> Arrays.setAll(any, word -> any[word] | set[word]));
		return Arrays.stream(any).map(Long::bitCount).sum() / (double) rims;
	}

	private long[] best(long[] group) {
		long[] best = levelled.get(0);
		int most = -1;
		for (long[] set : levelled) {
			int level = both(set, group, EVEN);
			if (level > most) {
				most = level;
				best = set;
			}
		}
		return best;
	}

	private static int both(long[] one, long[] other, long mask) {
		int count = 0;
		for (int word = 0; word < one.length; word++) {
			count += Long.bitCount(one[word] & other[word] & mask);
		}
		return count;
	}
}
