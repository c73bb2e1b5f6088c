package padwright.engine.learning;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;

import org.junit.jupiter.api.Test;

import padwright.engine.learning.NormalPool.Estimate;

class SettlingTest {

	private static final double[] LEAVES = { 0.5, 1, 1.5, 2, 3, 4 };
	private static final double TRUTH = 0.3;

	/** The middle between the leaf that slides and the next. */
	private static double felt(double gap) {
		double below = 0;
		for (double leaf : LEAVES) {
			if (gap < leaf) {
				return (below + leaf) / 2;
			}
			below = leaf;
		}
		return below;
	}

	private static double normal(SplittableRandom random) {
		return StrictMath.sqrt(-2 * StrictMath.log(1 - random.nextDouble()))
				* StrictMath.cos(2 * StrictMath.PI * random.nextDouble());
	}

	/** Instruments that differ, hours that differ, gaps anywhere, felt with leaves: as from a shop with a known truth. */
	private static List<List<Double>> shop(SplittableRandom random, int instruments) {
		List<List<Double>> shop = new ArrayList<>();
		for (int instrument = 0; instrument < instruments; instrument++) {
			double own = TRUTH + 0.15 * normal(random);
			List<Double> changes = new ArrayList<>();
			for (int hour = 0; hour < 16; hour++) {
				double left = 0.3 + 1.4 * random.nextDouble();
				changes.add(felt(Math.max(0, left + own + 0.1 * normal(random))) - felt(left));
			}
			shop.add(changes);
		}
		return shop;
	}

	@Test
	void theIntervalHoldsTheTruthNineTimesInTen() {
		SplittableRandom random = new SplittableRandom(3);
		int held = 0;
		double width = 0;
		for (int trial = 0; trial < 40; trial++) {
			Learned settled = Settling.of(shop(random, 12)).orElseThrow();
			held += settled.low() <= TRUTH && TRUTH <= settled.high() ? 1 : 0;
			width += settled.high() - settled.low();
		}
		// of 40 with chance 0.9: 29 or fewer in one of a thousand
		assertTrue(held >= 30, held + " of 40");
		assertTrue(width / 40 < 0.3, "as wide as " + width / 40);
	}

	@Test
	void fewInstrumentsOrFewHoursAreRefused() {
		SplittableRandom random = new SplittableRandom(4);
		assertEquals(Optional.empty(), Settling.of(shop(random, 2)));
		assertEquals(Optional.empty(), Settling.of(List.of(List.of(0.1, 0.2), List.of(0.1, 0.2), List.of(0.1, 0.2))));
		assertEquals(Optional.empty(), Settling.of(List.of()));
	}

	/**
	 * Coaching in eight schools (Rubin, Journal of Educational Statistics 6, 1981): the common mean's quantiles were computed
	 * apart from this code, by quadrature on 60 000 spreads, flat as here.
	 */
	@Test
	void theCommonMeanOfEightSchoolsHasTheIntervalOfPlainQuadrature() {
		double[] effects = { 28, 8, -3, 7, -1, 1, 18, 12 };
		double[] errors = { 15, 10, 16, 11, 9, 11, 10, 18 };
		List<Estimate> schools = new ArrayList<>();
		for (int school = 0; school < 8; school++) {
			schools.add(new Estimate(effects[school], errors[school]));
		}
		Learned common = new NormalPool(schools).common();
		assertEquals(-0.2817, common.low(), 0.02);
		assertEquals(7.8917, common.middle(), 0.02);
		assertEquals(16.2793, common.high(), 0.02);
	}
}
