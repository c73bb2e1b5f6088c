package padwright.engine.learning;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.SplittableRandom;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

import padwright.engine.learning.FeelScatter.Pair;

class FeelScatterTest {

	private static final double[] LEAVES = { 0.5, 1, 1.5, 2, 3, 4 };

	/** Gaps are exponential with a mean of 0.8 thou; a hand goes up the leaves until one drags. */
	@ParameterizedTest
	@ValueSource(doubles = { 0.06, 0.12, 0.25 })
	void theScatterOfSimulatedHandsLiesInItsInterval(double truth) {
		SplittableRandom random = new SplittableRandom(5);
		int held = 0;
		for (int shop = 0; shop < 10; shop++) {
			List<Pair> pairs = new ArrayList<>();
			for (int hour = 0; hour < 500; hour++) {
				double gap = -0.8 * StrictMath.log(random.nextDouble());
				pairs.add(new Pair(felt(gap, truth, random), felt(gap, truth, random)));
			}
			Learned scatter = new FeelScatter(LEAVES).of(pairs);
			held += scatter.low() <= truth && scatter.high() >= truth ? 1 : 0;
		}
		assertTrue(held >= 6, held + " of 10");
	}

	private static int felt(double gap, double scatter, SplittableRandom random) {
		for (int leaf = 0; leaf < LEAVES.length; leaf++) {
			if (gap + scatter * normal(random) < LEAVES[leaf]) {
				return leaf;
			}
		}
		return LEAVES.length;
	}

	private static double normal(SplittableRandom random) {
		return StrictMath.sqrt(-2 * StrictMath.log(1 - random.nextDouble()))
				* StrictMath.cos(2 * Math.PI * random.nextDouble());
	}

	@Test
	void pairsThatDragTwiceTellNothing() {
		List<Pair> drags = Collections.nCopies(1000, new Pair(0, 0));
		assertFalse(FeelScatter.canTell(drags));
		assertThrows(IllegalArgumentException.class, () -> new FeelScatter(LEAVES).of(drags));
	}
}
