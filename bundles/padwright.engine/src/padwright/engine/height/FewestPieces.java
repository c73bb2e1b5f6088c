package padwright.engine.height;

import java.util.Arrays;

/**
 * The fewest, then most even, pieces that add up to a given sum. Films are taken up one by one, thinnest first. The
 * cost of a choice is one number: pieces first, then the sum of the squared thicknesses.
 */
final class FewestPieces {

	/** Sums are below 2^20 steps, so a sum of squares is below 2^41. */
	private static final long ONE_PIECE = 1L << 41;
	private static final long UNREACHABLE = Long.MAX_VALUE;
	private static final int MOST_CELLS = 1 << 24;

	private final SteppedStock stock;
	private final int sum;
	private final char[][] taken;
	private long[] cost;
	private final int[] window;

	private FewestPieces(SteppedStock stock, int sum) {
		this.stock = stock;
		this.sum = sum;
		requireModest(stock, sum);
		taken = new char[stock.films()][sum + 1];
		cost = new long[sum + 1];
		Arrays.fill(cost, UNREACHABLE);
		cost[0] = 0;
		window = new int[sum + 1];
	}

	/**
	 * How many of each film to take.
	 *
	 * @param sum a reachable sum
	 * @throws IllegalArgumentException if the tables would be too large
	 */
	static int[] counts(SteppedStock stock, int sum) {
		FewestPieces search = new FewestPieces(stock, sum);
		for (int film = 0; film < stock.films(); film++) {
			search.takeUp(film);
		}
		return search.trace();
	}

	private static void requireModest(SteppedStock stock, int sum) {
		if ((long) stock.films() * (sum + 1) > MOST_CELLS) {
			throw new IllegalArgumentException(stock.films() + " thicknesses over " + sum + " steps of " + stock.step()
					+ " nm are too many to search");
		}
		if (stock.films() > 0 && sum / stock.steps()[0] > Character.MAX_VALUE) {
			throw new IllegalArgumentException(
					"a stack of more than " + (int) Character.MAX_VALUE + " pieces is too many to search");
		}
	}

	private void takeUp(int film) {
		long[] with = new long[sum + 1];
		int steps = stock.steps()[film];
		int pieces = stock.pieces()[film];
		if (pieces == 1) {
			takeOne(film, with);
		} else if (pieces >= sum / steps) {
			takeAny(film, with);
		} else {
			for (int remainder = 0; remainder < steps; remainder++) {
				takeSome(film, remainder, with);
			}
		}
		cost = with;
	}

	private void takeOne(int film, long[] with) {
		int steps = stock.steps()[film];
		long piece = piece(steps);
		for (int at = 0; at <= sum; at++) {
			boolean better = at >= steps && cost[at - steps] < cost[at] - piece;
			with[at] = better ? cost[at - steps] + piece : cost[at];
			taken[film][at] = (char) (better ? 1 : 0);
		}
	}

	private void takeAny(int film, long[] with) {
		int steps = stock.steps()[film];
		long piece = piece(steps);
		for (int at = 0; at <= sum; at++) {
			boolean better = at >= steps && with[at - steps] < cost[at] - piece;
			with[at] = better ? with[at - steps] + piece : cost[at];
			taken[film][at] = (char) (better ? taken[film][at - steps] + 1 : 0);
		}
	}

	private static long piece(long steps) {
		return ONE_PIECE + steps * steps;
	}

	/**
	 * All sums that differ by whole pieces of {@code film}. The best number of pieces is found as a minimum over a
	 * sliding window, of costs from which the pieces up to there are deducted; of equals the latest, which takes fewer
	 * of this film, the thickest so far.
	 */
	private void takeSome(int film, int remainder, long[] with) {
		int steps = stock.steps()[film];
		long piece = piece(steps);
		int first = 0;
		int end = 0;
		for (int at = remainder, j = 0; at <= sum; at += steps, j++) {
			if (cost[at] != UNREACHABLE) {
				while (end > first && cost[remainder + window[end - 1] * steps] + (j - window[end - 1]) * piece
						>= cost[at]) {
					end--;
				}
				window[end++] = j;
			}
			if (first < end && j - window[first] > stock.pieces()[film]) {
				first++;
			}
			boolean reachable = first < end;
			with[at] = reachable ? cost[remainder + window[first] * steps] + (j - window[first]) * piece : UNREACHABLE;
			taken[film][at] = reachable ? (char) (j - window[first]) : 0;
		}
	}

	private int[] trace() {
		int[] counts = new int[stock.films()];
		int left = sum;
		for (int film = stock.films() - 1; film >= 0; film--) {
			counts[film] = taken[film][left];
			left -= counts[film] * stock.steps()[film];
		}
		return counts;
	}
}
