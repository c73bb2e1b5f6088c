package padwright.engine.learning;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.DoubleUnaryOperator;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * A Weibull distribution of lives of which only brackets are known: S(t) = exp(−(t/scale)^shape), likelihood the product of
 * S(from) − S(to). Interval by the likelihood on a grid about its summit, flat in the logarithms of both.
 */
public final class WeibullLife {

	/** Fewer failures tell no life. */
	public static final int LEAST_FAILURES = 5;

	private static final double GOLDEN = (StrictMath.sqrt(5) - 1) / 2;
	private static final int NARROWINGS = 90;
	private static final int GRID = 61;
	private static final double LEAST_SHAPE = StrictMath.log(0.1);
	private static final double MOST_SHAPE = StrictMath.log(30);

	private final Map<LifeBracket, Long> lives;
	private final double longest;
	private final double logScale;
	private final double logShape;

	/** @throws IllegalArgumentException with fewer than {@link #LEAST_FAILURES} failures */
	public WeibullLife(List<LifeBracket> brackets) {
		if (brackets.stream().filter(LifeBracket::isFailed).count() < LEAST_FAILURES) {
			throw new IllegalArgumentException("fewer than " + LEAST_FAILURES + " failures tell no life");
		}
		lives = brackets.stream()
				.collect(Collectors.groupingBy(Function.identity(), LinkedHashMap::new, Collectors.counting()));
		longest = brackets.stream().mapToDouble(life -> life.isFailed() ? life.to() : life.from()).max().orElseThrow();
		logShape = summit(shape -> logLikelihood(bestScale(shape), shape), LEAST_SHAPE, MOST_SHAPE);
		logScale = bestScale(logShape);
	}

	private double bestScale(double shape) {
		return summit(scale -> logLikelihood(scale, shape), StrictMath.log(longest) - 9, StrictMath.log(longest) + 9);
	}

	/** Golden section; what is sought has one summit. */
	private static double summit(DoubleUnaryOperator height, double from, double to) {
		double low = from;
		double high = to;
		double left = high - GOLDEN * (high - low);
		double right = low + GOLDEN * (high - low);
		double atLeft = height.applyAsDouble(left);
		double atRight = height.applyAsDouble(right);
		for (int narrowing = 0; narrowing < NARROWINGS && high - low > 1e-10; narrowing++) {
			if (atLeft >= atRight) {
				high = right;
				right = left;
				atRight = atLeft;
				left = high - GOLDEN * (high - low);
				atLeft = height.applyAsDouble(left);
			} else {
				low = left;
				left = right;
				atLeft = atRight;
				right = low + GOLDEN * (high - low);
				atRight = height.applyAsDouble(right);
			}
		}
		return (low + high) / 2;
	}

	private double logLikelihood(double logScale, double logShape) {
		double scale = StrictMath.exp(logScale);
		double shape = StrictMath.exp(logShape);
		double sum = 0;
		for (Map.Entry<LifeBracket, Long> life : lives.entrySet()) {
			double whole = hazard(life.getKey().from(), scale, shape);
			double failed = life.getKey().isFailed()
					? StrictMath.log(-StrictMath.expm1(whole - hazard(life.getKey().to(), scale, shape))) : 0;
			sum += life.getValue() * (failed - whole);
		}
		return Double.isNaN(sum) ? Double.NEGATIVE_INFINITY : sum;
	}

	private static double hazard(double time, double scale, double shape) {
		return time == 0 ? 0 : StrictMath.pow(time / scale, shape);
	}

	/** By which 63 in 100 have failed. */
	public double scale() {
		return StrictMath.exp(logScale);
	}

	/** Above 1 where the old fail sooner. */
	public double shape() {
		return StrictMath.exp(logShape);
	}

	public double logLikelihood() {
		return logLikelihood(logScale, logShape);
	}

	/** By when half have failed. */
	public Learned median() {
		long failures = lives.entrySet().stream().filter(life -> life.getKey().isFailed())
				.mapToLong(Map.Entry::getValue).sum();
		double width = 5 / StrictMath.sqrt(failures);
		double[] beliefs = new double[GRID * GRID];
		for (int point = 0; point < beliefs.length; point++) {
			beliefs[point] = logLikelihood(scaleAt(point, width), shapeAt(point, width));
		}
		return new WeightedGrid(beliefs).learned(point -> StrictMath.exp(scaleAt(point, width)
				+ StrictMath.log(StrictMath.log(2)) / StrictMath.exp(shapeAt(point, width))));
	}

	/** The scale of a steady rate is known to one over the root of the failures; a flat shape makes it worse. */
	private double scaleAt(int point, double width) {
		return logScale + 2 * width * offset(point / GRID) / Math.max(0.5, Math.min(1, shape()));
	}

	private double shapeAt(int point, double width) {
		return logShape + width * offset(point % GRID);
	}

	private static double offset(int step) {
		return 2.0 * step / (GRID - 1) - 1;
	}
}
