package padwright.engine.calibration;

import java.util.List;
import java.util.stream.DoubleStream;

/** Newton's method for {@link CensoredNormal}, on intervals shifted and scaled to the order of one. */
final class CensoredFit {

	private static final int MOST_STEPS = 200;
	private static final int MOST_HALVINGS = 60;
	private static final double SMALLEST_INVERSE_DEVIATION = 1e-3;
	private static final double ENOUGH = 1e-13;

	private final List<Interval> intervals;
	private final double centre;
	private final double scale;

	/** 1/deviation and mean/deviation of the scaled values, and what the likelihood does there. */
	private double inverse;
	private double ratio;
	private double logLikelihood;
	private double byInverse;
	private double byRatio;
	private double byInverseTwice;
	private double byBoth;
	private double byRatioTwice;

	CensoredFit(List<Interval> values) {
		double[] ends = values.stream().flatMapToDouble(value -> DoubleStream.of(value.low(), value.high()))
				.filter(Double::isFinite).sorted().toArray();
		centre = (ends[0] + ends[ends.length - 1]) / 2;
		scale = ends[ends.length - 1] - ends[0];
		intervals = values.stream().map(value -> value.minus(centre))
				.map(value -> new Interval(value.low() / scale, value.high() / scale)).toList();
	}

	CensoredNormal maximum() {
		moveTo(1, 0);
		int steps = 0;
		while (climb() && steps < MOST_STEPS) {
			steps++;
		}
		return new CensoredNormal(centre + scale * ratio / inverse, scale / inverse, logLikelihood);
	}

	/** One step of Newton's method; false at the top, where no gain worth a step is foreseen. */
	private boolean climb() {
		double determinant = byInverseTwice * byRatioTwice - byBoth * byBoth;
		double inverseStep = (byBoth * byRatio - byRatioTwice * byInverse) / determinant;
		double ratioStep = (byBoth * byInverse - byInverseTwice * byRatio) / determinant;
		if (byInverse * inverseStep + byRatio * ratioStep < ENOUGH) {
			return false;
		}
		double fromInverse = inverse;
		double fromRatio = ratio;
		double from = logLikelihood;
		double part = 1;
		for (int halving = 0; halving < MOST_HALVINGS; halving++, part /= 2) {
			double next = Math.max(fromInverse + part * inverseStep, SMALLEST_INVERSE_DEVIATION);
			moveTo(next, fromRatio + part * ratioStep);
			if (logLikelihood > from) {
				return true;
			}
		}
		moveTo(fromInverse, fromRatio);
		return false;
	}

	private void moveTo(double inverse, double ratio) {
		this.inverse = inverse;
		this.ratio = ratio;
		logLikelihood = 0;
		byInverse = 0;
		byRatio = 0;
		byInverseTwice = 0;
		byBoth = 0;
		byRatioTwice = 0;
		intervals.forEach(this::add);
	}

	private void add(Interval interval) {
		double low = inverse * interval.low() - ratio;
		double high = inverse * interval.high() - ratio;
		double probability = NormalCurve.between(low, high);
		double densityLow = NormalCurve.density(low) / probability;
		double densityHigh = NormalCurve.density(high) / probability;
		double inverseSlope = product(interval.high(), densityHigh) - product(interval.low(), densityLow);
		double ratioSlope = densityLow - densityHigh;
		double curveLow = product(low, densityLow);
		double curveHigh = product(high, densityHigh);
		logLikelihood += StrictMath.log(probability);
		byInverse += inverseSlope;
		byRatio += ratioSlope;
		byInverseTwice += product(interval.low(), product(interval.low(), curveLow))
				- product(interval.high(), product(interval.high(), curveHigh)) - inverseSlope * inverseSlope;
		byBoth += product(interval.high(), curveHigh) - product(interval.low(), curveLow) - inverseSlope * ratioSlope;
		byRatioTwice += curveLow - curveHigh - ratioSlope * ratioSlope;
	}

	/** Zero where a density is, even at an infinite bound. */
	private static double product(double factor, double vanishing) {
		return vanishing == 0 ? 0 : factor * vanishing;
	}
}
