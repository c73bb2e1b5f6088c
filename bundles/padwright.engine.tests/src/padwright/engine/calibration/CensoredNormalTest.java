package padwright.engine.calibration;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

import org.junit.jupiter.api.Test;

class CensoredNormalTest {

	/** As quoted in scipy's tests of fits to censored data, from the R package fitdistrplus. */
	@Test
	void fitsIntervals() {
		CensoredNormal fit = CensoredNormal.fit(List.of(new Interval(0.10, 0.20), new Interval(0.50, 0.55),
				new Interval(0.75, 0.90), new Interval(0.80, 0.95)));

		assertEquals(0.5919990, fit.mean(), 5e-6);
		assertEquals(0.2868042, fit.deviation(), 5e-6);
	}

	@Test
	void isTheLikeliestOfItsNeighbours() {
		SplittableRandom random = new SplittableRandom(40);
		for (int run = 0; run < 2_000; run++) {
			List<Interval> intervals = disagreeing(random);
			CensoredNormal fit = CensoredNormal.fit(intervals);

			assertEquals(logLikelihood(intervals, fit.mean(), fit.deviation()), fit.logLikelihood(), 1e-9);
			for (double part : new double[] { -0.2, -0.01, 0.01, 0.2 }) {
				double mean = fit.mean() + part * fit.deviation();
				double deviation = fit.deviation() * (1 + part);
				assertTrue(logLikelihood(intervals, mean, fit.deviation()) < fit.logLikelihood());
				assertTrue(logLikelihood(intervals, fit.mean(), deviation) < fit.logLikelihood());
				assertTrue(logLikelihood(intervals, mean, deviation) < fit.logLikelihood());
			}
		}
	}

	@Test
	void movesAndScalesWithTheIntervals() {
		SplittableRandom random = new SplittableRandom(41);
		for (int run = 0; run < 500; run++) {
			List<Interval> intervals = disagreeing(random);
			CensoredNormal fit = CensoredNormal.fit(intervals);
			CensoredNormal moved = CensoredNormal.fit(intervals.stream()
					.map(value -> new Interval(7 + 3 * value.low(), 7 + 3 * value.high())).toList());

			assertEquals(7 + 3 * fit.mean(), moved.mean(), 1e-5);
			assertEquals(3 * fit.deviation(), moved.deviation(), 1e-5);
		}
	}

	/** Three to twelve intervals, some open to one side, of which at least two closed ones are apart. */
	private static List<Interval> disagreeing(SplittableRandom random) {
		List<Interval> intervals = new ArrayList<>(
				List.of(new Interval(-1, -0.5 - random.nextDouble() * 0.1), new Interval(0.5, 0.9),
						new Interval(-0.2, 0.2)));
		for (int more = random.nextInt(10); more > 0; more--) {
			double low = random.nextDouble(-1, 1);
			intervals.add(switch (random.nextInt(4)) {
				case 0 -> new Interval(Double.NEGATIVE_INFINITY, low);
				case 1 -> new Interval(low, Double.POSITIVE_INFINITY);
				default -> new Interval(low, low + random.nextDouble(0.01, 0.8));
			});
		}
		return intervals;
	}

	private static double logLikelihood(List<Interval> intervals, double mean, double deviation) {
		return intervals.stream().mapToDouble(value -> Math.log(NormalCurve.between(
				(value.low() - mean) / deviation, (value.high() - mean) / deviation))).sum();
	}

	@Test
	void hasNoDeviationWhereAllIntervalsMeet() {
		assertEquals(new CensoredNormal(2.5, 0, 0),
				CensoredNormal.fit(List.of(new Interval(1, 3), new Interval(2, Double.POSITIVE_INFINITY))));
		assertEquals(new CensoredNormal(2, 0, 0),
				CensoredNormal.fit(List.of(new Interval(2, Double.POSITIVE_INFINITY))));
		assertEquals(new CensoredNormal(2, 0, 0),
				CensoredNormal.fit(List.of(new Interval(Double.NEGATIVE_INFINITY, 2))));
	}

	@Test
	void endsWhereNothingLimitsTheDeviation() {
		CensoredNormal fit = CensoredNormal.fit(List.of(new Interval(Double.NEGATIVE_INFINITY, 0),
				new Interval(1, Double.POSITIVE_INFINITY)));

		assertEquals(1_000, fit.deviation(), 1e-6);
		assertEquals(2 * Math.log(0.5), fit.logLikelihood(), 1e-2);
	}

	@Test
	void refusesNothing() {
		assertThrows(IllegalArgumentException.class, () -> CensoredNormal.fit(List.of()));
		assertThrows(IllegalArgumentException.class, () -> new Interval(2, 1));
		assertThrows(IllegalArgumentException.class, () -> new Interval(Double.NaN, 1));
	}
}
