package padwright.engine.learning;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;

import padwright.engine.calibration.NormalCurve;
import padwright.engine.learning.NarrowingGrid.Side;

/**
 * How finely a hand feels, from the same hour felt twice with nothing changed between: a leaf of thickness t drags with
 * probability Φ((t − g)/s), g being the gap and s the scatter. What gaps there are is not known; they are taken to be
 * exponential, with a mean that is found together with s. All in one unit, thou say.
 */
public final class FeelScatter {

	/**
	 * One hour felt twice, by the number of leaves that slide free: 0 where the finest drags.
	 */
	public record Pair(int first, int second) {
	}

	/** Fewer pairs in which a leaf slides tell nothing of the scatter. */
	public static final int LEAST_PAIRS = 30;

	private static final int GAPS = 160;
	private static final int MEANS = 30;
	private static final int SCATTERS = 60;

	private final double[] leaves;
	private final double[] gaps = new double[GAPS];

	/** @param leaves thicknesses, finest first, at least one */
	public FeelScatter(double... leaves) {
		this.leaves = leaves.clone();
		double most = leaves[leaves.length - 1] * 2;
		for (int gap = 0; gap < GAPS; gap++) {
			gaps[gap] = most * (gap + 0.5) / GAPS;
		}
	}

	/** Whether pairs are enough to tell: a pair that drags twice tells nothing. */
	public static boolean canTell(List<Pair> pairs) {
		return pairs.stream().filter(pair -> pair.first() + pair.second() > 0).count() >= LEAST_PAIRS;
	}

	/**
	 * The scatter, between a twentieth of the finest leaf and four times it.
	 *
	 * @throws IllegalArgumentException if the pairs are too few to tell
	 */
	public Learned of(List<Pair> pairs) {
		if (!canTell(pairs)) {
			throw new IllegalArgumentException("fewer than " + LEAST_PAIRS + " pairs with a leaf that slides");
		}
		Map<Pair, Long> alike = pairs.stream()
				.collect(Collectors.groupingBy(Function.identity(), LinkedHashMap::new, Collectors.counting()));
		double finest = StrictMath.log(leaves[0]);
		return new NarrowingGrid(new Side(finest - StrictMath.log(20), finest + StrictMath.log(4), SCATTERS),
				new Side(finest - StrictMath.log(10), finest + StrictMath.log(10), MEANS), scatter -> {
					double[][] readings = readings(StrictMath.exp(scatter));
					return mean -> belief(readings, StrictMath.exp(mean), alike);
				}).learned((scatter, mean) -> StrictMath.exp(scatter));
	}

	/** Chance of each reading at each gap: leaves are tried from the finest up until one drags. */
	private double[][] readings(double scatter) {
		double[][] chances = new double[GAPS][leaves.length + 1];
		for (int gap = 0; gap < GAPS; gap++) {
			double free = 1;
			for (int reading = 0; reading < leaves.length; reading++) {
				double drags = NormalCurve.below((leaves[reading] - gaps[gap]) / scatter);
				chances[gap][reading] = free * drags;
				free *= 1 - drags;
			}
			chances[gap][leaves.length] = free;
		}
		return chances;
	}

	private double belief(double[][] readings, double mean, Map<Pair, Long> pairs) {
		double[] shares = new double[GAPS];
		double whole = 0;
		for (int gap = 0; gap < GAPS; gap++) {
			shares[gap] = StrictMath.exp(-gaps[gap] / mean);
			whole += shares[gap];
		}
		double belief = 0;
		for (Map.Entry<Pair, Long> pair : pairs.entrySet()) {
			double chance = 0;
			for (int gap = 0; gap < GAPS; gap++) {
				chance += shares[gap] * readings[gap][pair.getKey().first()] * readings[gap][pair.getKey().second()];
			}
			belief += pair.getValue() * StrictMath.log(chance / whole);
		}
		return belief;
	}
}
