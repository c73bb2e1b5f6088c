package padwright.engine.height;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

import padwright.engine.film.FilmSupply;
import padwright.engine.length.Length;

/**
 * Finds the full shims from stock that come nearest to a height. Exact, by dynamic programming in the greatest common
 * divisor of the thicknesses; the same input gives the same answer, whatever the order of the supply.
 *
 * <p>Of all choices within the quantities on hand, the answer has in this order:
 * <ol>
 * <li>the smallest error, over or under;
 * <li>of a sum over and a sum under by the same error the one under, so that a pad is not set too high;
 * <li>the fewest pieces;
 * <li>the most even thicknesses: the smallest sum of squares, which for a given sum and number of pieces is the
 * smallest variance;
 * <li>the thinnest thickest piece, then the thinnest second piece, and so on.
 * </ol>
 */
public final class HeightSolver {

	private HeightSolver() {
	}

	/**
	 * The full shims nearest to {@code target}.
	 *
	 * @param target any length; zero or negative gives no pieces
	 * @param supply the film on hand, in any order; entries of one thickness add up
	 * @throws IllegalArgumentException if the target is so many times the common divisor of the thicknesses that the
	 *             tables would not fit in memory (far beyond any instrument)
	 */
	public static HeightSolution solve(Length target, List<FilmSupply> supply) {
		if (target.signum() <= 0) {
			return HeightSolution.of(List.of(), target);
		}
		SteppedStock stock = SteppedStock.of(supply, target);
		int best = stock.nearest(ReachableSums.of(stock), target.nanometres());
		return HeightSolution.of(pieces(stock, best), target);
	}

	private static List<Length> pieces(SteppedStock stock, int sum) {
		int[] counts = FewestPieces.counts(stock, sum);
		List<Length> pieces = new ArrayList<>();
		for (int film = 0; film < counts.length; film++) {
			for (int i = 0; i < counts[film]; i++) {
				pieces.add(stock.thickness(film));
			}
		}
		pieces.sort(Comparator.reverseOrder());
		return pieces;
	}
}
