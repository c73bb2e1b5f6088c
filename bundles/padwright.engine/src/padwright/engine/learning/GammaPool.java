package padwright.engine.learning;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;

import org.hipparchus.special.Gamma;

import padwright.engine.learning.NarrowingGrid.Side;

/**
 * Rates of several members of a group, each with counts over years: a member's rate is gamma distributed with shape α and
 * rate β, its count Poisson, and α and β are believed as in the pump example of George, Makov and Smith (Scandinavian
 * Journal of Statistics 20, 1993): α exponential with mean 1, β gamma with shape 0.1 and rate 1. Members with little to tell
 * are drawn toward the others.
 */
public final class GammaPool {

	/**
	 * Events of one member.
	 *
	 * @param count 0 or more
	 * @param years more than 0
	 */
	public record Exposure(int count, double years) {

		/** @throws IllegalArgumentException if one is out of range */
		public Exposure {
			if (count < 0 || !(years > 0 && years < Double.POSITIVE_INFINITY)) {
				throw new IllegalArgumentException(count + " events in " + years + " years cannot be");
			}
		}
	}

	private static final int HALVINGS = 24;
	private static final int STEPS = 90;
	private static final double LEAST = StrictMath.log(0.01);
	private static final double MOST = StrictMath.log(200);
	private static final double BETA_SHAPE = 0.1;
	private final Map<Exposure, Long> members;
	/** Logarithms of the shape and of the mean. */
	private final NarrowingGrid grid;

	/** @throws IllegalArgumentException if there is no member */
	public GammaPool(List<Exposure> all) {
		if (all.isEmpty()) {
			throw new IllegalArgumentException("a pool without a member");
		}
		members = all.stream()
				.collect(Collectors.groupingBy(Function.identity(), LinkedHashMap::new, Collectors.counting()));
		grid = new NarrowingGrid(new Side(LEAST, MOST, STEPS), new Side(LEAST - MOST, MOST - LEAST, STEPS),
				shape -> mean -> belief(StrictMath.exp(shape), StrictMath.exp(shape - mean)));
	}

	/** With the share of the grid's cell, which is even in the logarithms of shape and mean, and so of shape and rate. */
	private double belief(double alpha, double beta) {
		double belief = StrictMath.log(alpha) - alpha + BETA_SHAPE * StrictMath.log(beta) - beta;
		double own = alpha * StrictMath.log(beta) - Gamma.logGamma(alpha);
		for (Map.Entry<Exposure, Long> member : members.entrySet()) {
			Exposure seen = member.getKey();
			belief += member.getValue() * (own + Gamma.logGamma(alpha + seen.count())
					- (alpha + seen.count()) * StrictMath.log(beta + seen.years()));
		}
		return belief;
	}

	/** Mean of α, the shape of the members' rates. */
	public double shape() {
		return grid.mean((shape, mean) -> StrictMath.exp(shape));
	}

	/** Mean of β, the years that the members' rates weigh as. */
	public double years() {
		return grid.mean((shape, mean) -> StrictMath.exp(shape - mean));
	}

	/** The mean rate of all such members, events a year. */
	public Learned mean() {
		return grid.learned((shape, mean) -> StrictMath.exp(mean));
	}

	/** The rate of one member, events a year. */
	public Learned rate(Exposure member) {
		return new Learned(quantile(member, Learned.BELOW), quantile(member, 0.5), quantile(member, 1 - Learned.BELOW));
	}

	/** By halving; what is believed of the rate is a mixture of gamma distributions. */
	private double quantile(Exposure member, double share) {
		double low = 0;
		double high = 100 * (member.count() + 1) / member.years();
		for (int halving = 0; halving < HALVINGS; halving++) {
			double middle = (low + high) / 2;
			double below = grid.mean((shape, mean) -> Gamma.regularizedGammaP(StrictMath.exp(shape) + member.count(),
					(StrictMath.exp(shape - mean) + member.years()) * middle));
			if (below < share) {
				low = middle;
			} else {
				high = middle;
			}
		}
		return (low + high) / 2;
	}

	/** What is expected of one member, events a year. */
	public double expected(Exposure member) {
		return grid.mean((shape, mean) -> (StrictMath.exp(shape) + member.count())
				/ (StrictMath.exp(shape - mean) + member.years()));
	}
}
