package padwright.benchmarks;

import java.util.Arrays;
import java.util.List;
import java.util.function.Supplier;

/** Wall-clock times of single runs. */
final class Timing {

	private static final double MILLION = 1e6;

	/** @param milliseconds it took */
	record Timed<T>(T result, double milliseconds) {
	}

	private Timing() {
	}

	static <T> Timed<T> of(Supplier<T> work) {
		long start = System.nanoTime();
		T result = work.get();
		return new Timed<>(result, (System.nanoTime() - start) / MILLION);
	}

	static double median(List<Double> milliseconds) {
		double[] sorted = milliseconds.stream().mapToDouble(Double::doubleValue).toArray();
		Arrays.sort(sorted);
		int middle = sorted.length / 2;
		return sorted.length % 2 == 1 ? sorted[middle] : (sorted[middle - 1] + sorted[middle]) / 2;
	}
}
