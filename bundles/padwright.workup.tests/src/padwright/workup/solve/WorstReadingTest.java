package padwright.workup.solve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

import org.junit.jupiter.api.Test;

import padwright.engine.clock.ClockHour;
import padwright.engine.length.Length;
import padwright.engine.rim.RimProfile;
import padwright.model.plan.KeyService;
import padwright.workup.DemoPlan;

class WorstReadingTest {

	private final DemoPlan demo = new DemoPlan();
	private final KeyService row = demo.row(demo.key("F"));

	@Test
	void itIsTheWidestGapAtTheHoursReadWithTheKeyAtRest() {
		demo.felt(row, ". 1 2 0.5");
		KeySolution solution = demo.solved().keys().get(0);
		RimProfile residual = solution.level().orElseThrow().solution().residual();
		Length least = new Length(residual.stream().min().getAsLong());
		WorstReading worst = WorstReading.of(solution).orElseThrow();
		List<ClockHour> hours = demo.plan.getHours();
		assertTrue(hours.contains(worst.hour()));
		assertEquals(residual.at(worst.hour()).minus(least), worst.gap());
		hours.forEach(hour -> assertTrue(!residual.at(hour).isLongerThan(residual.at(worst.hour()))));
	}

	@Test
	void theFirstOfEquals() {
		demo.felt(row, ". . . .");
		assertEquals(Optional.of(new WorstReading(ClockHour.ofHour(12), Length.ZERO)),
				WorstReading.of(demo.solved().keys().get(0)));
	}

	@Test
	void aPadThatWasNotFeltHasNone() {
		assertEquals(Optional.empty(), WorstReading.of(demo.solved().keys().get(0)));
	}

	@Test
	void aRestingKeyTouchesSomewhere() {
		long[] gaps = new long[ClockHour.STATIONS];
		Arrays.setAll(gaps, station -> 500 - 40L * station);
		RimProfile resting = RestingGap.of(RimProfile.ofNanometres(gaps));
		assertEquals(0, resting.stream().min().getAsLong());
		assertEquals(RimProfile.ofNanometres(gaps).spread(), resting.spread());
	}
}
