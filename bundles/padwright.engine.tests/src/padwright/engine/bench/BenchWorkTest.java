package padwright.engine.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

import padwright.engine.bench.BenchWork.Told;

/** The benchmark's long form is releng/benchmark --rounds. */
class BenchWorkTest {

	private static final int PADS = 24;

	@Test
	void comesLevelSoonerThanByTheRuleOfThumb() {
		RoundsTable answered = RoundsTable.play(PADS, Instrument.SOLDERED_RIGID, 8, true, Method.ANSWERED);
		RoundsTable byThumb = RoundsTable.play(PADS, Instrument.SOLDERED_RIGID, 8, true, Method.RULE_OF_THUMB);
		assertTrue(answered.levelAfter(3) >= 0.75, () -> answered.levelAfter(3) + " after three rounds");
		assertTrue(answered.meanRounds() < 0.75 * byThumb.meanRounds());
		assertTrue(answered.nearlyLevel() >= 0.9);
		assertEquals(0, answered.told().stream().filter(Told::noneUnexplained).count());
	}

	@Test
	void aPadOfANumberIsTheSameEveryTime() {
		assertEquals(new SimulatedPad(5, Instrument.DRAWN_FELT).widestGap(),
				new SimulatedPad(5, Instrument.DRAWN_FELT).widestGap());
	}
}
