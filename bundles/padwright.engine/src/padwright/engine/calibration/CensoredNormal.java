package padwright.engine.calibration;

import java.util.List;

/**
 * The normal distribution under which values known only to lie in intervals are likeliest.
 *
 * @param mean in the unit of the intervals
 * @param deviation standard deviation; zero if all intervals have a value in common
 * @param logLikelihood natural logarithm of the probability of all intervals, at most 0
 */
record CensoredNormal(double mean, double deviation, double logLikelihood) {

	/**
	 * The likeliest mean and deviation.
	 *
	 * <p>The logarithm of the likelihood is concave in 1/deviation and mean/deviation, so that Newton's method, held
	 * back while a step does not gain, finds the one maximum. Where there is none (intervals that are all open on one
	 * side and disagree), the deviation ends at a thousand times the extent of the bounds.
	 *
	 * @throws IllegalArgumentException if there are no intervals
	 */
	static CensoredNormal fit(List<Interval> intervals) {
		if (intervals.isEmpty()) {
			throw new IllegalArgumentException("no interval to fit a distribution to");
		}
		double low = intervals.stream().mapToDouble(Interval::low).max().getAsDouble();
		double high = intervals.stream().mapToDouble(Interval::high).min().getAsDouble();
		return low <= high ? new CensoredNormal(middle(low, high), 0, 0) : new CensoredFit(intervals).maximum();
	}

	private static double middle(double low, double high) {
		if (Double.isInfinite(low)) {
			return Double.isInfinite(high) ? 0 : high;
		}
		return Double.isInfinite(high) ? low : (low + high) / 2;
	}
}
