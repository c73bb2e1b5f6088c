package padwright.engine.learning;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.SplittableRandom;

import org.junit.jupiter.api.Test;

class WeibullLifeTest {

	private static final double NEVER = Double.POSITIVE_INFINITY;

	/**
	 * Months to deterioration, breast cosmesis data of Finkelstein and Wolfe, Biometrics 41 (1985): radiotherapy, n = 46.
	 * Scale, shape and likelihood were computed apart from this code.
	 */
	@Test
	void bracketsOfRadiotherapyGiveTheirFit() {
		double[] brackets = { 0, 5, 0, 7, 0, 8, 4, 11, 5, 11, 5, 12, 6, 10, 7, 14, 7, 16, 11, 15, 11, 18, 15, NEVER, 17, 25,
				17, 25, 17, NEVER, 18, NEVER, 19, 26, 19, 35, 22, NEVER, 24, NEVER, 24, NEVER, 25, 37, 26, 40, 27, 34, 32,
				NEVER, 33, NEVER, 34, NEVER, 36, 44, 36, 48, 36, NEVER, 36, NEVER, 37, 44, 37, NEVER, 37, NEVER, 37, NEVER, 38,
				NEVER, 40, NEVER, 45, NEVER };
		List<LifeBracket> lives = brackets(brackets);
		lives.addAll(Collections.nCopies(8, new LifeBracket(46, NEVER)));
		WeibullLife life = new WeibullLife(lives);
		assertEquals(46, lives.size());
		assertEquals(57.513097, life.scale(), 0.001);
		assertEquals(1.121613, life.shape(), 0.0001);
		assertEquals(-64.731471, life.logLikelihood(), 1e-5);
	}

	/** The other arm, with chemotherapy, n = 48. */
	@Test
	void bracketsWithChemotherapyGiveTheirFit() {
		double[] brackets = { 0, 5, 0, 22, 4, 8, 4, 9, 5, 8, 8, 12, 8, 21, 10, 17, 10, 35, 11, 13, 11, 17, 11, 20, 11, NEVER,
				11, NEVER, 12, 20, 13, 39, 13, NEVER, 13, NEVER, 13, NEVER, 14, 17, 14, 19, 15, 22, 16, 20, 16, 24, 16, 24, 16,
				60, 17, 23, 17, 26, 17, 27, 18, 24, 18, 25, 19, 32, 21, NEVER, 22, 32, 23, NEVER, 24, 30, 24, 31, 30, 34, 30, 36,
				31, NEVER, 32, NEVER, 33, 40, 34, NEVER, 34, NEVER, 35, 39, 35, NEVER, 44, 48, 48, NEVER };
		WeibullLife life = new WeibullLife(brackets(brackets));
		assertEquals(28.042474, life.scale(), 0.001);
		assertEquals(2.030238, life.shape(), 0.0002);
		assertEquals(-75.715068, life.logLikelihood(), 1e-5);
	}

	private static List<LifeBracket> brackets(double... ends) {
		List<LifeBracket> lives = new ArrayList<>();
		for (int end = 0; end < ends.length; end += 2) {
			lives.add(new LifeBracket(ends[end], ends[end + 1]));
		}
		return lives;
	}

	/** Pads of a true median life, looked at once a year for six years. */
	@Test
	void theMedianOfSimulatedPadsLiesInItsInterval() {
		SplittableRandom random = new SplittableRandom(11);
		double truth = 4 * StrictMath.pow(StrictMath.log(2), 1 / 1.6);
		int held = 0;
		for (int shop = 0; shop < 40; shop++) {
			List<LifeBracket> pads = new ArrayList<>();
			for (int pad = 0; pad < 60; pad++) {
				double life = 4 * StrictMath.pow(-StrictMath.log(random.nextDouble()), 1 / 1.6);
				double last = StrictMath.floor(life);
				pads.add(last >= 6 ? new LifeBracket(6, NEVER) : new LifeBracket(last, last + 1));
			}
			Learned median = new WeibullLife(pads).median();
			held += median.low() <= truth && median.high() >= truth ? 1 : 0;
		}
		assertTrue(held >= 31, held + " of 40");
	}

	@Test
	void tooFewFailuresAreRefused() {
		List<LifeBracket> lives = brackets(0, 1, 1, 2, 2, 3, 3, 4, 4, NEVER, 5, NEVER);
		assertThrows(IllegalArgumentException.class, () -> new WeibullLife(lives));
		assertThrows(IllegalArgumentException.class, () -> new LifeBracket(2, 2));
		assertThrows(IllegalArgumentException.class, () -> new LifeBracket(-1, 2));
	}
}
