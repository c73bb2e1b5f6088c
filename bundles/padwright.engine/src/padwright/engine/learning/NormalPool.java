package padwright.engine.learning;

import java.util.List;

import padwright.engine.calibration.NormalCurve;

/**
 * Figures of several groups, each known with a normal error, drawn toward each other as far as they look alike: group means
 * are normal about a common one; that one is believed to be anywhere, their spread anywhere above nothing (Rubin, Journal of
 * Educational Statistics 6, 1981; Gelman et al., Bayesian Data Analysis, section 5.5).
 */
public final class NormalPool {

	/**
	 * A group's own figure.
	 *
	 * @param error its standard error, more than 0
	 */
	public record Estimate(double value, double error) {

		/** @throws IllegalArgumentException if the error is not above nothing */
		public Estimate {
			if (!(error > 0 && error < Double.POSITIVE_INFINITY && Math.abs(value) < Double.POSITIVE_INFINITY)) {
				throw new IllegalArgumentException(value + " with an error of " + error + " tells nothing");
			}
		}
	}

	/** With two groups, any spread would do. */
	public static final int LEAST_GROUPS = 3;

	private static final double NEGLIGIBLE = 1e-9;
	private static final int HALVINGS = 30;
	private static final int STEPS = 4000;
	/** Spreads beyond this many times what is seen are not believed. */
	private static final double WIDEST = 12;

	private final List<Estimate> groups;
	private final double step;
	private final WeightedGrid grid;

	/** @throws IllegalArgumentException if there are fewer than {@link #LEAST_GROUPS} */
	public NormalPool(List<Estimate> groups) {
		if (groups.size() < LEAST_GROUPS) {
			throw new IllegalArgumentException(groups.size() + " groups cannot tell how alike they are");
		}
		this.groups = List.copyOf(groups);
		double range = groups.stream().mapToDouble(Estimate::value).max().orElseThrow()
				- groups.stream().mapToDouble(Estimate::value).min().orElseThrow();
		double error = groups.stream().mapToDouble(Estimate::error).max().orElseThrow();
		this.step = WIDEST * Math.max(range, error) / STEPS;
		double[] beliefs = new double[STEPS];
		for (int point = 0; point < STEPS; point++) {
			beliefs[point] = belief(spread(point));
		}
		grid = new WeightedGrid(beliefs);
	}

	private double spread(int point) {
		return (point + 0.5) * step;
	}

	/** The likelihood of a spread with the common mean integrated out. */
	private double belief(double spread) {
		double mean = mean(spread);
		double belief = -0.5 * StrictMath.log(precision(spread));
		for (Estimate group : groups) {
			double variance = group.error() * group.error() + spread * spread;
			double off = group.value() - mean;
			belief -= 0.5 * (StrictMath.log(variance) + off * off / variance);
		}
		return belief;
	}

	private double precision(double spread) {
		return groups.stream().mapToDouble(group -> 1 / (group.error() * group.error() + spread * spread)).sum();
	}

	/** How well {@link #pooled} knows a group's figure, as a standard error. */
	public double error(Estimate group) {
		double middle = pooled(group);
		double square = grid.mean(point -> {
			double own = 1 / (group.error() * group.error());
			double others = 1 / (spread(point) * spread(point));
			double share = others / (own + others);
			double at = (group.value() * own + mean(spread(point)) * others) / (own + others);
			return 1 / (own + others) + share * share / precision(spread(point)) + (at - middle) * (at - middle);
		});
		return StrictMath.sqrt(square);
	}

	private double mean(double spread) {
		return groups.stream().mapToDouble(group -> group.value() / (group.error() * group.error() + spread * spread)).sum()
				/ precision(spread);
	}

	/** The common mean. */
	public double mean() {
		return grid.mean(point -> mean(spread(point)));
	}

	/** The common mean with its interval: what is believed of it is a mixture of normal distributions. */
	public Learned common() {
		double[] means = new double[STEPS];
		double[] errors = new double[STEPS];
		for (int point = 0; point < STEPS; point++) {
			means[point] = mean(spread(point));
			errors[point] = 1 / StrictMath.sqrt(precision(spread(point)));
		}
		return new Learned(quantile(means, errors, Learned.BELOW), quantile(means, errors, 0.5),
				quantile(means, errors, 1 - Learned.BELOW));
	}

	private double quantile(double[] means, double[] errors, double share) {
		double reach = 2 * step * STEPS;
		double low = means[0] - reach;
		double high = means[0] + reach;
		for (int halving = 0; halving < HALVINGS; halving++) {
			double middle = (low + high) / 2;
			double below = grid.mean(point -> grid.weight(point) < NEGLIGIBLE ? 0
					: NormalCurve.below((middle - means[point]) / errors[point]));
			if (below < share) {
				low = middle;
			} else {
				high = middle;
			}
		}
		return (low + high) / 2;
	}

	/** How far the groups lie apart, as a standard deviation. */
	public Learned spread() {
		return grid.learned(this::spread);
	}

	/** A group's figure as it is believed with all others. */
	public double pooled(Estimate group) {
		return grid.mean(point -> {
			double own = 1 / (group.error() * group.error());
			double others = 1 / (spread(point) * spread(point));
			return (group.value() * own + mean(spread(point)) * others) / (own + others);
		});
	}
}
