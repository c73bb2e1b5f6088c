package padwright.engine.forecast;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;

import org.junit.jupiter.api.Test;

class TearRateTest {

	/** Bayes Rules!, chapter 5 (book club notes): Gamma(10, 2) and counts 6, 2, 2, 1 give Gamma(21, 6), mean 3.5. */
	@Test
	void countsUpdateTheGammaPrior() {
		List<TornPads> calls = IntStream.of(6, 2, 2, 1).mapToObj(count -> new TornPads(count, 1)).toList();
		TearRate posterior = new TearRate(10, 2).after(calls);
		assertEquals(new TearRate(21, 6), posterior);
		assertEquals(3.5, posterior.mean());
	}

	@Test
	void historyInPartsIsHistoryAtOnce() {
		TearRate atOnce = TearRate.MOST_PLAYERS.after(List.of(new TornPads(3, 1.5), new TornPads(0, 0.5)));
		TearRate inParts = TearRate.MOST_PLAYERS.after(List.of(new TornPads(3, 1.5)))
				.after(List.of(new TornPads(0, 0.5)));
		assertEquals(atOnce, inParts);
		assertEquals(new TearRate(12, 8), atOnce);
	}

	/** Derived here: gamma(9, 6) lies in 1 to 2 as Poisson(6) and Poisson(12) counts pass 9. */
	@Test
	void twoPlayersInThreeTearOneToTwoPads() {
		double within = poissonBelow(9, 6) - poissonBelow(9, 12);
		assertEquals(0.67, within, 0.03);
		assertEquals(1.5, TearRate.MOST_PLAYERS.mean());
		assertEquals(6.5, TearRate.ACID_SALIVA.mean());
	}

	/** With shape 1 the count is geometric: P(more than k) = q^(k+1) with q = t / (β + t); derived here. */
	@Test
	void quantilesOfShapeOneAreGeometric() {
		SplittableRandom random = new SplittableRandom(91);
		for (int i = 0; i < 500; i++) {
			double years = random.nextDouble(0.1, 10);
			double ahead = random.nextDouble(0.1, 10);
			double probability = random.nextDouble(0.01, 0.99);
			double q = ahead / (years + ahead);
			int geometric = (int) Math.max(0, Math.ceil(Math.log(1 - probability) / Math.log(q) - 1));
			assertEquals(geometric, new PredictedCounts(new TearRate(1, years), ahead).quantile(probability));
		}
	}

	@Test
	void theIntervalHoldsWhatItSaysInSimulatedPlayers() {
		SplittableRandom random = new SplittableRandom(92);
		TearForecast forecast = new TearRate(4, 3).forecast(2, 0.8);
		int inside = 0;
		double sum = 0;
		for (int i = 0; i < 20_000; i++) {
			double rate = IntStream.range(0, 4).mapToDouble(k -> -Math.log(1 - random.nextDouble())).sum() / 3;
			int torn = poisson(2 * rate, random);
			sum += torn;
			inside += torn >= forecast.low() && torn <= forecast.high() ? 1 : 0;
		}
		assertEquals(forecast.expected(), sum / 20_000, 0.05);
		assertTrue(inside >= 0.8 * 20_000 && inside <= 0.93 * 20_000, "inside " + inside);
	}

	@Test
	void muchExperienceComesNearAPlainPoisson() {
		TearForecast forecast = new TearRate(1e6, 1e5).forecast(1, 0.95);
		assertEquals(10, forecast.expected());
		int low = IntStream.range(0, 99).filter(k -> poissonBelow(k + 1, 10) >= 0.025).findFirst().orElseThrow();
		int high = IntStream.range(0, 99).filter(k -> poissonBelow(k + 1, 10) >= 0.975).findFirst().orElseThrow();
		assertEquals(low, forecast.low());
		assertEquals(high, forecast.high());
	}

	@Test
	void widerCoverageAndLongerTimeNeverNarrowTheForecast() {
		SplittableRandom random = new SplittableRandom(93);
		for (int i = 0; i < 300; i++) {
			TearRate rate = new TearRate(random.nextDouble(0.1, 50), random.nextDouble(0.5, 20));
			double ahead = random.nextDouble(0.1, 5);
			TearForecast narrow = rate.forecast(ahead, 0.5);
			TearForecast wide = rate.forecast(ahead, 0.95);
			assertTrue(wide.low() <= narrow.low() && wide.high() >= narrow.high());
			assertTrue(rate.forecast(ahead * 2, 0.95).high() >= wide.high());
		}
	}

	@Test
	void extremesEnd() {
		assertEquals(100_000, new TearRate(1e6, 1e3).forecast(100, 0.9999999999).expected(), 1e-6);
		assertTrue(new TearRate(0.01, 0.01).forecast(100, 0.999999).high() > 100);
	}

	@Test
	void badInputIsRefused() {
		assertThrows(IllegalArgumentException.class, () -> new TearRate(0, 1));
		assertThrows(IllegalArgumentException.class, () -> new TearRate(1, Double.NaN));
		assertThrows(IllegalArgumentException.class, () -> new TearRate(2000, 1));
		assertThrows(IllegalArgumentException.class, () -> new TornPads(-1, 1));
		assertThrows(IllegalArgumentException.class, () -> new TornPads(1, 0));
		assertThrows(IllegalArgumentException.class, () -> TearRate.MOST_PLAYERS.forecast(0, 0.9));
		assertThrows(IllegalArgumentException.class, () -> TearRate.MOST_PLAYERS.forecast(1, 1));
		assertThrows(IllegalArgumentException.class, () -> TearRate.MOST_PLAYERS.forecast(1, 0));
	}

	private static double poissonBelow(int count, double mean) {
		double term = Math.exp(-mean);
		double sum = 0;
		for (int k = 0; k < count; k++) {
			sum += term;
			term *= mean / (k + 1);
		}
		return sum;
	}

	private static int poisson(double mean, SplittableRandom random) {
		double limit = Math.exp(-mean);
		double product = random.nextDouble();
		int count = 0;
		while (product > limit) {
			product *= random.nextDouble();
			count++;
		}
		return count;
	}
}
