package padwright.workup.harm;

import java.util.Arrays;

/**
 * A figure that is known as far as a sample of possible ones tells.
 *
 * @param expected the mean
 * @param low the least but those of which 5 in 100 are less
 * @param high the greatest but those of which 5 in 100 are more
 */
public record Likely(double expected, double low, double high) {

	private static final double TAIL = 0.05;

	/** @throws IllegalArgumentException if there is none */
	static Likely of(double... sample) {
		double mean = Arrays.stream(sample).average()
				.orElseThrow(() -> new IllegalArgumentException("nothing to tell from"));
		double[] sorted = sample.clone();
		Arrays.sort(sorted);
		int tail = (int) (TAIL * sorted.length);
		return new Likely(mean, sorted[tail], sorted[sorted.length - 1 - tail]);
	}
}
