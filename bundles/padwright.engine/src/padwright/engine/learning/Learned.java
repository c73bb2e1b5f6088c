package padwright.engine.learning;

/**
 * A figure with the interval that holds it with {@link #COVERAGE}, equally much left out at both ends.
 *
 * @param low at most {@code middle}
 * @param middle the median
 * @param high at least {@code middle}
 */
public record Learned(double low, double middle, double high) {

	/** Probability of the interval. */
	public static final double COVERAGE = 0.9;

	/** Probability below {@link #low()}. */
	static final double BELOW = (1 - COVERAGE) / 2;
}
