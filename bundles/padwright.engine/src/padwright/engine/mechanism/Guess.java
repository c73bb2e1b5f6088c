package padwright.engine.mechanism;

import java.util.Arrays;

/**
 * Which keys move if an earlier guess tells what stands against moving. Keys and links by their number.
 *
 * @param earlier the keys that move in the earlier guess: links that act unless such a key moves do not act
 * @param causes what moves each key: the number of a link, {@link #FINGER}, or {@link #NOTHING}
 */
record Guess(boolean[] earlier, boolean[] moved, int[] causes) {

	static final int NOTHING = -1;
	static final int FINGER = -2;

	/** One in which nothing moves yet. */
	static Guess after(boolean[] earlier) {
		int[] causes = new int[earlier.length];
		Arrays.fill(causes, NOTHING);
		return new Guess(earlier, new boolean[earlier.length], causes);
	}

	int count() {
		int count = 0;
		for (boolean isMoved : moved) {
			count += isMoved ? 1 : 0;
		}
		return count;
	}

	boolean acts(NumberedLink link) {
		return moved[link.driver()] && (link.condition() == NOTHING
				|| (link.whenMoved() ? moved[link.condition()] : !earlier[link.condition()]));
	}
}
