package padwright.engine.evidence;

/**
 * A stream of numbers that is the same on every machine: SplitMix64 (G. Steele, D. Lea and C. Flood, Fast splittable
 * pseudorandom number generators, 2014; constants from memory). Changes; for one thread.
 */
public final class RandomStream {

	private static final double UNIT = 0x1.0p-53;
	private long state;
	private double spare;
	private boolean hasSpare;

	public RandomStream(long seed) {
		state = seed;
	}

	private long next() {
		state += 0x9E3779B97F4A7C15L;
		long mixed = (state ^ state >>> 30) * 0xBF58476D1CE4E5B9L;
		mixed = (mixed ^ mixed >>> 27) * 0x94D049BB133111EBL;
		return mixed ^ mixed >>> 31;
	}

	/** From 0 to below 1. */
	public double uniform() {
		return (next() >>> 11) * UNIT;
	}

	/** From 0 to below {@code bound}. */
	public int below(int bound) {
		return (int) (uniform() * bound);
	}

	/** Standard normal, by twos (G. Marsaglia and T. Bray, A convenient method for generating normal variables, 1964). */
	public double normal() {
		if (hasSpare) {
			hasSpare = false;
			return spare;
		}
		double across;
		double up;
		double square;
		do {
			across = 2 * uniform() - 1;
			up = 2 * uniform() - 1;
			square = across * across + up * up;
		} while (square >= 1 || square == 0);
		double stretch = Math.sqrt(-2 * StrictMath.log(square) / square);
		spare = up * stretch;
		hasSpare = true;
		return across * stretch;
	}
}
