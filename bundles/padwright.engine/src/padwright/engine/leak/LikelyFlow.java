package padwright.engine.leak;

import java.util.Arrays;

/**
 * A flow that is known as far as a sample of possible ones tells, in mL/min.
 *
 * @param expected the mean
 * @param low 5 in 100 are less
 * @param high 5 in 100 are more
 */
public record LikelyFlow(double expected, double low, double high) {

	private static final double LOW = 0.05;
	private static final double HIGH = 0.95;

	/**
	 * What a sample tells.
	 *
	 * @throws IllegalArgumentException if it is empty
	 */
	static LikelyFlow of(double[] flows) {
		if (flows.length == 0) {
			throw new IllegalArgumentException("no flow to tell from");
		}
		double[] sorted = flows.clone();
		Arrays.sort(sorted);
		return new LikelyFlow(Arrays.stream(flows).sum() / flows.length, at(sorted, LOW), at(sorted, HIGH));
	}

	private static double at(double[] sorted, double share) {
		return sorted[(int) Math.min(sorted.length - 1, share * sorted.length)];
	}
}
