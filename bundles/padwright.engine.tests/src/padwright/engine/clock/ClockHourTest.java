package padwright.engine.clock;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ClockHourTest {

	@ParameterizedTest
	@ValueSource(ints = { 1, 3, 6, 11, 12 })
	void wholeHourKeepsItsValue(int hour) {
		assertEquals(hour, ClockHour.ofHour(hour).hour().intValueExact());
	}

	@ParameterizedTest
	@ValueSource(ints = { -1, 0, 13 })
	void hourOffTheClockIsRefused(int hour) {
		assertThrows(IllegalArgumentException.class, () -> ClockHour.ofHour(hour));
	}
}
