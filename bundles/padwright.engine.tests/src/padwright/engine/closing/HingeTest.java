package padwright.engine.closing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import java.util.stream.IntStream;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

import padwright.engine.clock.ClockHour;
import padwright.engine.length.Length;
import padwright.engine.rim.RimProfile;

class HingeTest {

	private static final Hinge HINGE = Hinge.of(new ClockHour(0), Length.millimetres("7"), Length.millimetres("12"));

	/** From the geometry of a lever: a rise of the middle by one is one less R/a at the hinge and one more opposite. */
	@Test
	void weighsTheHingeSideLess() {
		assertEquals(1 - 7 / 12.0, HINGE.weight(0), 1e-12);
		assertEquals(1, HINGE.weight(6), 1e-12);
		assertEquals(1 + 7 / 12.0, HINGE.weight(12), 1e-12);
	}

	/** An arm that nobody measured ends 5 mm beyond the rim. */
	@Test
	void itsReachIsTheRadiusOverTheArm() {
		Length radius = Length.millimetres("7");
		assertEquals(7 / 12.0, Hinge.of(new ClockHour(3), radius, Length.millimetres("12")).reach(), 1e-12);
		assertEquals(Hinge.of(new ClockHour(3), radius, Length.millimetres("12")), Hinge.assumed(new ClockHour(3), radius));
	}

	/** Half a thou too much under a pad of 7 mm on an arm of 12 mm leaves 2 · 0.5 · 7/12 thou open opposite the hinge. */
	@Test
	void tooMuchFullShimOpensTheFarSide() {
		long[] flat = new long[ClockHour.STATIONS];
		java.util.Arrays.fill(flat, -12_700);
		RimProfile gap = ClosedGap.of(RimProfile.ofNanometres(flat), HINGE);
		assertEquals(0, gap.nanometresAt(0));
		assertEquals(Math.round(12_700 / (1 - 7 / 12.0) * (1 + 7 / 12.0) - 12_700), gap.nanometresAt(12), 1);
	}

	@Test
	void aChangeOfHeightIsSwallowedOnlyByAKeyThatComesDownFlat() {
		RimProfile rim = random(new Random(3));
		RimProfile raised = RimProfile.ofNanometres(rim.stream().map(gap -> gap + 5_000).toArray());
		Hinge flat = new Hinge(new ClockHour(0), 0);
		assertEquals(ClosedGap.of(rim, flat), ClosedGap.of(raised, flat));
		assertTrue(!ClosedGap.of(rim, HINGE).equals(ClosedGap.of(raised, HINGE)));
	}

	@ParameterizedTest
	@ValueSource(ints = { 1, 2, 3, 4, 5, 6, 7, 8 })
	void aClosedKeyTouchesAndTurnsWithItsHinge(int seed) {
		RimProfile rim = random(new Random(seed));
		RimProfile gap = ClosedGap.of(rim, HINGE);
		assertEquals(0, gap.stream().min().getAsLong());
		RimProfile turned = RimProfile.ofNanometres(
				IntStream.range(0, 24).mapToLong(station -> rim.nanometresAt((station + 24 - seed) % 24)).toArray());
		RimProfile turnedGap = ClosedGap.of(turned, new Hinge(new ClockHour(seed), HINGE.reach()));
		for (int station = 0; station < 24; station++) {
			assertEquals(gap.nanometresAt(station), turnedGap.nanometresAt((station + seed) % 24));
		}
	}

	@Test
	void refusesAnArmThatEndsOnTheRim() {
		assertThrows(IllegalArgumentException.class,
				() -> Hinge.of(new ClockHour(0), Length.millimetres("7"), Length.millimetres("7")));
		assertThrows(IllegalArgumentException.class,
				() -> Hinge.of(new ClockHour(0), Length.ZERO, Length.millimetres("7")));
		assertThrows(IllegalArgumentException.class, () -> new Hinge(new ClockHour(0), 1));
		assertThrows(IllegalArgumentException.class, () -> new Hinge(new ClockHour(0), -0.01));
	}

	private static RimProfile random(Random random) {
		return RimProfile.ofNanometres(random.longs(24, -30_000, 30_000).toArray());
	}
}
