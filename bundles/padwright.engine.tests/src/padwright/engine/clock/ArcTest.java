package padwright.engine.clock;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.stream.IntStream;

import org.junit.jupiter.api.Test;

class ArcTest {

	@Test
	void coversHalfACellAtItsEndsAndWholeCellsBetween() {
		Arc arc = Arc.between(ClockHour.ofHour(11), ClockHour.ofHour(1));

		assertEquals(4, arc.halfHours());
		assertEquals(1, arc.quarterHoursCoveredAt(22));
		assertEquals(2, arc.quarterHoursCoveredAt(23));
		assertEquals(2, arc.quarterHoursCoveredAt(0));
		assertEquals(2, arc.quarterHoursCoveredAt(1));
		assertEquals(1, arc.quarterHoursCoveredAt(2));
		assertEquals(0, arc.quarterHoursCoveredAt(3));
		assertEquals(0, arc.quarterHoursCoveredAt(21));
	}

	@Test
	void coversItsLengthInAll() {
		for (int from = 0; from < ClockHour.STATIONS; from++) {
			for (int halfHours = 1; halfHours < ClockHour.STATIONS; halfHours++) {
				Arc arc = new Arc(new ClockHour(from), halfHours);

				int quarters = IntStream.range(0, ClockHour.STATIONS).map(arc::quarterHoursCoveredAt).sum();
				assertEquals(2 * halfHours, quarters);
			}
		}
	}

	@Test
	void makesAWholeCircleWithTheArcBackToItsStart() {
		for (int halfHours = 1; halfHours < ClockHour.STATIONS; halfHours++) {
			Arc arc = new Arc(ClockHour.ofHour(5), halfHours);
			Arc rest = Arc.between(arc.to(), arc.from());

			for (int station = 0; station < ClockHour.STATIONS; station++) {
				assertEquals(2, arc.quarterHoursCoveredAt(station) + rest.quarterHoursCoveredAt(station));
			}
		}
	}

	@Test
	void turnsWithItsStart() {
		for (int halfHours = 1; halfHours < ClockHour.STATIONS; halfHours++) {
			Arc arc = new Arc(new ClockHour(0), halfHours);
			for (int by = 0; by < ClockHour.STATIONS; by++) {
				Arc turned = new Arc(new ClockHour(by), halfHours);
				for (int station = 0; station < ClockHour.STATIONS; station++) {
					assertEquals(arc.quarterHoursCoveredAt(station),
							turned.quarterHoursCoveredAt((station + by) % ClockHour.STATIONS));
				}
			}
		}
	}

	@Test
	void isWrittenAsInAPlan() {
		assertEquals("from 2 to 4", Arc.between(ClockHour.ofHour(2), ClockHour.ofHour(4)).toString());
	}

	@Test
	void refusesNothingAndAWholeCircle() {
		ClockHour noon = new ClockHour(0);
		assertThrows(IllegalArgumentException.class, () -> Arc.between(noon, noon));
		assertThrows(IllegalArgumentException.class, () -> new Arc(noon, 24));
		assertThrows(IllegalArgumentException.class, () -> new Arc(noon, -1));
	}
}
