package padwright.engine.height;

import java.math.BigInteger;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

import padwright.engine.film.FilmSupply;
import padwright.engine.length.Length;

/**
 * The films that can matter for a target, thinnest first, as whole steps of their common divisor.
 *
 * @param step the greatest common divisor of the thicknesses, in nm
 * @param steps each thickness in steps, ascending, no two alike
 * @param pieces how many of each can be used, at least 1
 * @param highestSum the highest sum worth a look, in steps
 */
record SteppedStock(long step, int[] steps, int[] pieces, int highestSum) {

	/** About a million steps: 25 mm in steps of 25 nm. */
	static final int MOST_STEPS = 1 << 20;

	/**
	 * @param target more than zero
	 * @throws IllegalArgumentException if the highest sum exceeds {@link #MOST_STEPS}
	 */
	static SteppedStock of(List<FilmSupply> supply, Length target) {
		TreeMap<Long, Long> piecesByThickness = new TreeMap<>();
		long within = Math.min(target.nanometres(), Long.MAX_VALUE / 4);
		for (FilmSupply film : supply) {
			if (film.pieces() > 0 && film.thickness().nanometres() <= 2 * within) {
				piecesByThickness.merge(film.thickness().nanometres(), (long) film.pieces(), Long::sum);
			}
		}
		return piecesByThickness.isEmpty() ? new SteppedStock(1, new int[0], new int[0], 0)
				: of(piecesByThickness, within);
	}

	private static SteppedStock of(TreeMap<Long, Long> piecesByThickness, long target) {
		long step = piecesByThickness.keySet().stream().reduce(0L, SteppedStock::greatestCommonDivisor);
		int highestSum = inSteps(highestSum(piecesByThickness, target), step);
		int[] steps = piecesByThickness.keySet().stream().mapToInt(thickness -> inSteps(thickness, step)).toArray();
		int[] pieces = new int[steps.length];
		int film = 0;
		for (long available : piecesByThickness.values()) {
			pieces[film] = (int) Math.min(available, highestSum / steps[film]);
			film++;
		}
		return new SteppedStock(step, steps, pieces, highestSum);
	}

	/**
	 * If a best sum is over the target, then leaving out any of its pieces is no better: it overshoots by at most half
	 * its thinnest piece. Nor can it be worse than no film at all, nor more than all of the stock.
	 */
	private static long highestSum(TreeMap<Long, Long> piecesByThickness, long target) {
		BigInteger all = BigInteger.ZERO;
		for (Map.Entry<Long, Long> film : piecesByThickness.entrySet()) {
			all = all.add(BigInteger.valueOf(film.getKey()).multiply(BigInteger.valueOf(film.getValue())));
		}
		long useful = Math.min(Math.addExact(target, piecesByThickness.lastKey() / 2), 2 * target);
		return all.min(BigInteger.valueOf(useful)).longValueExact();
	}

	private static int inSteps(long nanometres, long step) {
		long steps = nanometres / step;
		if (steps > MOST_STEPS) {
			throw new IllegalArgumentException("a sum of " + new Length(nanometres) + " is " + steps
					+ " steps of the " + step + " nm that the film thicknesses share, more than " + MOST_STEPS);
		}
		return (int) steps;
	}

	private static long greatestCommonDivisor(long a, long b) {
		return b == 0 ? a : greatestCommonDivisor(b, a % b);
	}

	int films() {
		return steps.length;
	}

	Length thickness(int film) {
		return new Length(steps[film] * step);
	}

	/** The reachable sum nearest to {@code target} nm, in steps; the lower of two equally near. */
	int nearest(BigInteger reachable, long target) {
		int under = (int) Math.min(target / step, highestSum);
		while (!reachable.testBit(under)) {
			under--;
		}
		long errorUnder = target - under * step;
		for (int over = under + 1; over <= highestSum && over * step - target < errorUnder; over++) {
			if (reachable.testBit(over)) {
				return over;
			}
		}
		return under;
	}
}
