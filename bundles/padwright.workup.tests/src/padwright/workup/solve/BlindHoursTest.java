package padwright.workup.solve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

import padwright.engine.clock.ClockHour;

class BlindHoursTest {

	private static List<ClockHour> hours(String figures) {
		return Arrays.stream(figures.split(" ")).map(BigDecimal::new).map(ClockHour::ofHour).toList();
	}

	@ParameterizedTest
	@ValueSource(strings = { "12 3 6 9", "1.5 4.5 7.5 10.5", "12 2 4 6 8 10", "12 1.5 3 4.5 6 7.5 9 10.5" })
	void aWaveOfHalfAsManyCrestsIsNoughtAtEvenSteps(String figures) {
		List<ClockHour> hours = hours(figures);
		assertTrue(BlindHours.are(hours));
		double crests = hours.size() / 2.0;
		double turn = 2 * Math.PI / hours.size() / 2;
		hours.forEach(hour -> assertEquals(0, Math.cos(crests * (hour.angle() - hours.get(0).angle() - turn)), 1e-9));
	}

	@ParameterizedTest
	@ValueSource(strings = { "12 6", "12 4 8", "12 3 6 8", "12 2.5 5 7 9.5", "12 1 2 3 4 5 6 7 8 9 10 11", "12 12 3 6" })
	void oddOrUnevenStepsHideNoSaddle(String figures) {
		assertFalse(BlindHours.are(hours(figures)));
	}

	@Test
	void hoursAreTurnedByHalfAStep() {
		assertEquals(hours("1.5 4.5 7.5 10.5"), BlindHours.turned(hours("12 3 6 9")));
		assertEquals(hours("12.5 2 3.5 5 6.5 8 9.5 11"), BlindHours.turned(hours("12 1.5 3 4.5 6 7.5 9 10.5")));
		assertEquals(hours("1.5").get(0), BlindHours.between(hours("12 3 6 9")));
	}
}
