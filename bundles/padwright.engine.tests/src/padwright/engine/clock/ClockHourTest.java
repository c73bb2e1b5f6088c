package padwright.engine.clock;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ClockHourTest {

	@Test
	void isReadBackAsItIsWritten() {
		for (int station = 0; station < ClockHour.STATIONS; station++) {
			ClockHour hour = new ClockHour(station);

			assertEquals(hour, ClockHour.ofHour(hour.hour()));
			assertEquals(hour, ClockHour.ofHour(new BigDecimal(hour.toString())));
		}
	}

	@Test
	void startsAtTwelve() {
		assertEquals(new ClockHour(0), ClockHour.ofHour(12));
		assertEquals(new ClockHour(1), ClockHour.ofHour(new BigDecimal("12.5")));
		assertEquals(new ClockHour(2), ClockHour.ofHour(1));
		assertEquals(new ClockHour(23), ClockHour.ofHour(new BigDecimal("11.50")));
		assertEquals("12", new ClockHour(0).toString());
		assertEquals("10", ClockHour.ofHour(10).toString());
		assertEquals("12.5", new ClockHour(1).toString());
	}

	@ParameterizedTest
	@ValueSource(strings = { "0", "0.5", "13", "1.25", "-3", "12.75", "1e9" })
	void refusesWhatIsNotAHalfHourOfTheClock(String hour) {
		BigDecimal number = new BigDecimal(hour);
		assertThrows(IllegalArgumentException.class, () -> ClockHour.ofHour(number));
	}

	@ParameterizedTest
	@ValueSource(ints = { -1, 24 })
	void refusesAStationOffTheClock(int station) {
		assertThrows(IllegalArgumentException.class, () -> new ClockHour(station));
	}

	@Test
	void goesAroundInBothDirections() {
		for (int from = 0; from < ClockHour.STATIONS; from++) {
			for (int by = -50; by <= 50; by++) {
				ClockHour start = new ClockHour(from);
				ClockHour end = start.plusHalfHours(by);

				assertEquals(Math.floorMod(by, ClockHour.STATIONS), start.halfHoursTo(end));
				assertEquals(start, end.plusHalfHours(-by));
			}
		}
	}

	@Test
	void hasAQuarterTurnPerThreeHours() {
		assertEquals(0, new ClockHour(0).angle());
		assertEquals(Math.PI / 2, ClockHour.ofHour(3).angle(), 1e-15);
		assertEquals(Math.PI, ClockHour.ofHour(6).angle(), 1e-15);
		assertTrue(ClockHour.ofHour(9).compareTo(ClockHour.ofHour(3)) > 0);
		assertTrue(ClockHour.ofHour(12).compareTo(ClockHour.ofHour(11)) < 0);
	}
}
