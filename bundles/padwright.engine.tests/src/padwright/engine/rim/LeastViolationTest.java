package padwright.engine.rim;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.SplittableRandom;

import org.junit.jupiter.api.Test;

import padwright.engine.length.Length;

class LeastViolationTest {

	/** No profile can miss by less than what the weights of the dual programme prove; the estimate misses by that. */
	@Test
	void isWhatTheEstimateMissesBy() {
		SplittableRandom random = new SplittableRandom(20);
		for (int run = 0; run < 3_000; run++) {
			List<RimReading> readings = RandomReadings.next(random);
			LeastViolation least = LeastViolation.of(readings, FourierBasis.ofOrder(RimFit.order(readings)));

			Length missed = RimFit.fit(readings).contradictions().stream().map(OutlyingReading::by)
					.reduce(Length.ZERO, Length::plus);

			assertEquals(least.total(), missed.nanometres(), 0.51 * readings.size(), readings::toString);
		}
	}
}
