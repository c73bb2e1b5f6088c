package padwright.engine.seating;

import java.util.Arrays;

/**
 * Actions to be done together.
 *
 * @param ids places in the table of actions, ascending
 * @param level how many rims of the sample they level
 * @param score the share of rims levelled less the prices
 */
record ActionSet(int[] ids, int level, double score) implements Comparable<ActionSet> {

	/** Best first: by score, then fewer actions, then in the order of the table. */
	@Override
	public int compareTo(ActionSet other) {
		int byScore = Double.compare(other.score, score);
		int byCount = byScore != 0 ? byScore : Integer.compare(ids.length, other.ids.length);
		return byCount != 0 ? byCount : Arrays.compare(ids, other.ids);
	}
}
