package padwright.engine.learning;

import java.util.Arrays;
import java.util.Comparator;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;

/** Points of a grid with the logarithm of what is believed of each, up to a constant. */
final class WeightedGrid {

	private final double[] weights;

	/** @param logDensities of the points, with the logarithm of each one's share of the space in them */
	WeightedGrid(double[] logDensities) {
		double most = Arrays.stream(logDensities).max().orElseThrow();
		double[] shares = Arrays.stream(logDensities).map(density -> StrictMath.exp(density - most)).toArray();
		double sum = Arrays.stream(shares).sum();
		weights = Arrays.stream(shares).map(share -> share / sum).toArray();
	}

	double weight(int point) {
		return weights[point];
	}

	/** The mean of a function of the points. */
	double mean(IntToDoubleFunction value) {
		return IntStream.range(0, weights.length).mapToDouble(point -> weights[point] * value.applyAsDouble(point)).sum();
	}

	/** Median and interval of a function of the points. */
	Learned learned(IntToDoubleFunction value) {
		int[] order = IntStream.range(0, weights.length).filter(point -> weights[point] > 0).boxed()
				.sorted(Comparator.comparingDouble(value::applyAsDouble)).mapToInt(Integer::intValue).toArray();
		return new Learned(quantile(order, value, Learned.BELOW), quantile(order, value, 0.5),
				quantile(order, value, 1 - Learned.BELOW));
	}

	private double quantile(int[] order, IntToDoubleFunction value, double share) {
		double sum = 0;
		for (int point : order) {
			sum += weights[point];
			if (sum >= share) {
				return value.applyAsDouble(point);
			}
		}
		return value.applyAsDouble(order[order.length - 1]);
	}
}
