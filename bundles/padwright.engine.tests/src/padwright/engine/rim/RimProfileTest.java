package padwright.engine.rim;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.stream.LongStream;

import org.junit.jupiter.api.Test;

import padwright.engine.clock.ClockHour;
import padwright.engine.length.Length;

class RimProfileTest {

	private static final long[] STEPS = LongStream.range(0, 24).map(i -> 10 * i - 20).toArray();

	@Test
	void holdsAGapForEachStation() {
		RimProfile profile = RimProfile.ofNanometres(STEPS);

		assertEquals(-20, profile.nanometresAt(0));
		assertEquals(new Length(210), profile.at(new ClockHour(23)));
		assertEquals(new Length(230), profile.spread());
		assertEquals(new Length(95), profile.mean());
	}

	@Test
	void isNotChangedThroughItsArrays() {
		long[] gaps = STEPS.clone();
		RimProfile profile = RimProfile.ofNanometres(gaps);
		gaps[0] = 7;
		profile.toNanometres()[1] = 7;

		assertEquals(RimProfile.ofNanometres(STEPS), profile);
		assertEquals(RimProfile.ofNanometres(STEPS).hashCode(), profile.hashCode());
		assertNotEquals(RimProfile.ofNanometres(gaps), profile);
		assertNotEquals(RimProfile.ofNanometres(gaps).hashCode(), profile.hashCode());
	}

	@Test
	void saysAllItsGapsInNanometres() {
		String said = RimProfile.ofNanometres(STEPS).toString();
		assertTrue(said.startsWith("[-20, -10, 0, 10, ") && said.endsWith(", 210] nm"), said);
	}

	@Test
	void refusesAnotherNumberOfGaps() {
		assertThrows(IllegalArgumentException.class, () -> RimProfile.ofNanometres(1, 2, 3));
	}
}
