package padwright.engine.rim;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import java.util.Optional;

import org.junit.jupiter.api.Test;

import padwright.engine.clock.ClockHour;
import padwright.engine.length.Length;

class RimReadingTest {

	private static final ClockHour HOUR = ClockHour.ofHour(4);
	private static final Length HALF = Length.thou("0.5");
	private static final Length ONE = Length.thou("1");
	private static final FeelerSet FEELERS = new FeelerSet(List.of(Length.thou("3"), HALF, ONE));

	@Test
	void liesUnderTheFinestLeafThatDrags() {
		assertEquals(new RimReading(HOUR, Length.ZERO, Optional.of(HALF)), FEELERS.drags(HOUR));
	}

	@Test
	void liesBetweenTheLeafThatSlidesFreeAndTheNext() {
		assertEquals(new RimReading(HOUR, HALF, Optional.of(ONE)), FEELERS.free(HOUR, HALF));
		assertEquals(new RimReading(HOUR, ONE, Optional.of(Length.thou("3"))), FEELERS.free(HOUR, ONE));
	}

	@Test
	void theFinestLeafIsKnownAndItsHalfRoundedDown() {
		assertEquals(HALF, FEELERS.finest());
		assertEquals(new Length(6_350), FEELERS.halfTheFinest());
		assertEquals(new Length(6_350), new FeelerSet(List.of(new Length(12_701))).halfTheFinest());
	}

	@Test
	void isOpenAboveTheThickestLeaf() {
		assertEquals(new RimReading(HOUR, Length.thou("3"), Optional.empty()),
				FEELERS.free(HOUR, Length.thou("3")));
	}

	@Test
	void isMissedByTheWayToItsNearerBound() {
		RimReading reading = FEELERS.free(HOUR, HALF);
		assertEquals(new Length(1), reading.distanceFrom(HALF.minus(new Length(1))));
		assertEquals(Length.ZERO, reading.distanceFrom(HALF));
		assertEquals(Length.ZERO, reading.distanceFrom(ONE));
		assertEquals(HALF, reading.distanceFrom(Length.thou("1.5")));
		assertEquals(Length.ZERO, FEELERS.free(HOUR, Length.thou("3")).distanceFrom(Length.thou("99")));
	}

	@Test
	void refusesImpossibleBounds() {
		Optional<Length> open = Optional.empty();
		Optional<Length> half = Optional.of(HALF);
		Length far = Length.millimetres("10.1");
		assertThrows(IllegalArgumentException.class, () -> new RimReading(HOUR, new Length(-1), open));
		assertThrows(IllegalArgumentException.class, () -> new RimReading(HOUR, ONE, half));
		assertThrows(IllegalArgumentException.class, () -> RimReading.point(HOUR, far));
		assertThrows(IllegalArgumentException.class, () -> new RimReading(HOUR, ONE, Optional.of(far)));
	}

	@Test
	void refusesImpossibleFeelers() {
		List<Length> twice = List.of(HALF, HALF);
		List<Length> nothing = List.of(Length.ZERO, HALF);
		assertThrows(IllegalArgumentException.class, () -> new FeelerSet(List.of()));
		assertThrows(IllegalArgumentException.class, () -> new FeelerSet(twice));
		assertThrows(IllegalArgumentException.class, () -> new FeelerSet(nothing));
		assertThrows(IllegalArgumentException.class, () -> FEELERS.free(HOUR, Length.thou("2")));
	}

	@Test
	void refusesAContradictionByNothing() {
		RimReading reading = FEELERS.drags(HOUR);
		assertThrows(IllegalArgumentException.class, () -> new OutlyingReading(reading, Length.ZERO));
	}
}
