package padwright.engine.learning;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;

import org.junit.jupiter.api.Test;

import padwright.engine.learning.GammaPool.Exposure;
import padwright.engine.learning.NormalPool.Estimate;

class PoolingTest {

	/**
	 * Failures of ten pumps: counts and times of Gaver and O'Muircheartaigh, Technometrics 29 (1987). The means were computed
	 * apart from this code, by quadrature on 1500 by 1500 points.
	 */
	@Test
	void ratesOfPumpsAreDrawnTowardEachOther() {
		int[] counts = { 5, 1, 5, 14, 3, 19, 1, 1, 4, 22 };
		double[] times = { 94.3, 15.7, 62.9, 126, 5.24, 31.4, 1.05, 1.05, 2.1, 10.5 };
		double[] expected = { 0.05982, 0.10183, 0.08924, 0.11579, 0.60134, 0.60939, 0.89253, 0.89253, 1.5863, 1.98983 };
		List<Exposure> pumps = IntStream.range(0, 10).mapToObj(pump -> new Exposure(counts[pump], times[pump])).toList();
		GammaPool pool = new GammaPool(pumps);
		for (int pump = 0; pump < 10; pump++) {
			assertEquals(expected[pump], pool.expected(pumps.get(pump)), 0.002 * expected[pump], "pump " + pump);
		}
		assertEquals(0.69719, pool.shape(), 0.002);
		assertEquals(0.92684, pool.years(), 0.003);
		assertTrue(pool.mean().low() < pool.shape() / pool.years() && pool.mean().high() > pool.shape() / pool.years());
	}

	/**
	 * Coaching in eight schools: effects and errors of Rubin, Journal of Educational Statistics 6 (1981). The means and
	 * what they are off by were computed apart from this code, by quadrature over the spread.
	 */
	@Test
	void effectsInSchoolsAreDrawnTowardEachOther() {
		double[] effects = { 28, 8, -3, 7, -1, 1, 18, 12 };
		double[] own = { 15, 10, 16, 11, 9, 11, 10, 18 };
		double[] errors = { 8.3414, 6.2748, 7.7652, 6.5463, 6.3574, 6.7103, 6.7856, 7.8882 };
		double[] expected = { 11.4004, 7.8946, 6.1307, 7.6447, 5.1264, 6.1385, 10.6671, 8.4568 };
		List<Estimate> schools = IntStream.range(0, 8).mapToObj(school -> new Estimate(effects[school], own[school]))
				.toList();
		NormalPool pool = new NormalPool(schools);
		assertEquals(7.9324, pool.mean(), 0.005);
		assertEquals(5.2385, pool.spread().middle(), 0.12);
		for (int school = 0; school < 8; school++) {
			assertEquals(expected[school], pool.pooled(schools.get(school)), 0.02, "school " + school);
			assertEquals(errors[school], pool.error(schools.get(school)), 0.02, "school " + school);
		}
		assertLearned(new double[] { -0.2817, 7.8917, 16.2793 }, pool.common());
	}

	/** One member by itself: the integral over both beliefs, the rate's in closed form, computed apart from this code. */
	@Test
	void aRateOfOneMemberHasItsIntervalByIntegration() {
		assertLearned(new double[] { 0.16942, 0.67439, 1.74437 }, rateAlone(2, 3));
		assertLearned(new double[] { 0.87197, 1.73016, 3.02976 }, rateAlone(7, 4));
		assertLearned(new double[] { 1.52035, 1.99468, 2.55921 }, rateAlone(40, 20));
	}

	private static Learned rateAlone(int count, double years) {
		Exposure alone = new Exposure(count, years);
		return new GammaPool(List.of(alone)).rate(alone);
	}

	/** The low end, the middle and the high one, within a hundredth of the interval. */
	private static void assertLearned(double[] expected, Learned found) {
		double close = 0.01 * (expected[2] - expected[0]);
		assertArrayEquals(expected, new double[] { found.low(), found.middle(), found.high() }, close);
	}

	/** A thousand players leave an interval as wide as the scatter of their counts says. */
	@Test
	void manyMembersLeaveANarrowIntervalAndNotASinglePoint() {
		SplittableRandom random = new SplittableRandom(11);
		List<Exposure> players = new ArrayList<>();
		for (int player = 0; player < 1000; player++) {
			double rate = 1.5 * 0.25 * IntStream.range(0, 4).mapToDouble(part -> -StrictMath.log(random.nextDouble())).sum();
			players.add(new Exposure(poisson(rate * 3, random), 3));
		}
		Learned mean = new GammaPool(players).mean();
		double events = players.stream().mapToInt(Exposure::count).sum();
		// Poisson within a player (variance 4.5) and gamma among players (4.5 squared over 4), over a thousand of them
		double error = StrictMath.sqrt((4.5 + 4.5 * 4.5 / 4) / 1000) / 3;
		assertEquals(2 * 1.645 * error, mean.high() - mean.low(), 0.3 * error);
		assertEquals(events / 3000, mean.middle(), 0.2 * error);
	}

	/** Players whose own rates are gamma about 1.5 a year; the interval of nine in ten holds the truth at least that often less chance. */
	@Test
	void theMeanRateOfSimulatedPlayersLiesInItsInterval() {
		SplittableRandom random = new SplittableRandom(7);
		int held = 0;
		for (int shop = 0; shop < 30; shop++) {
			List<Exposure> players = new ArrayList<>();
			for (int player = 0; player < 40; player++) {
				double rate = 1.5 * 0.25 * IntStream.range(0, 4).mapToDouble(part -> -StrictMath.log(random.nextDouble())).sum();
				players.add(new Exposure(poisson(rate * 3, random), 3));
			}
			Learned mean = new GammaPool(players).mean();
			held += mean.low() <= 1.5 && mean.high() >= 1.5 ? 1 : 0;
		}
		assertTrue(held >= 23 && held <= 30, held + " of 30");
	}

	private static int poisson(double mean, SplittableRandom random) {
		double product = random.nextDouble();
		int count = 0;
		while (product > StrictMath.exp(-mean)) {
			product *= random.nextDouble();
			count++;
		}
		return count;
	}

	@Test
	void tooLittleIsRefused() {
		assertThrows(IllegalArgumentException.class, () -> new GammaPool(List.of()));
		assertThrows(IllegalArgumentException.class, () -> new Exposure(-1, 1));
		assertThrows(IllegalArgumentException.class, () -> new Exposure(1, 0));
		assertThrows(IllegalArgumentException.class, () -> new NormalPool(List.of(new Estimate(1, 1), new Estimate(2, 1))));
		assertThrows(IllegalArgumentException.class, () -> new Estimate(1, 0));
	}
}
