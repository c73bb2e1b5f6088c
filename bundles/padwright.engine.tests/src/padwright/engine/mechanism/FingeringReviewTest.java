package padwright.engine.mechanism;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import java.util.OptionalInt;

import org.junit.jupiter.api.Test;

import padwright.engine.mechanism.FingeringReview.Alike;

class FingeringReviewTest {

	private static final Mechanism THREE = new Mechanism(
			List.of(new MovingKey("A", Rest.OPEN), new MovingKey("B", Rest.OPEN), new MovingKey("V", Rest.CLOSED)),
			List.of(CoveredHole.under("A"), CoveredHole.under("B"), CoveredHole.under("V")),
			List.of(FingerTouch.moving("1", "A"), FingerTouch.moving("2", "B"), FingerTouch.moving("side", "A"),
					FingerTouch.moving("vent", "V")),
			List.of(KeyLink.holds("B", "V")));

	@Test
	void whatNoFingeringUsesIsFound() {
		FingeringReview review = FingeringReview.of(THREE, List.of(note("D4", 6200, "1")));
		assertEquals(List.of("B", "V"), review.unusedKeys());
		assertEquals(List.of("2", "side", "vent"), review.unusedTouches());
		assertEquals(List.of("A"), List.copyOf(review.states().get("D4").moved().keySet()));
	}

	/** Between D4 and G♯4 nothing can be open yet; above both, as on a one-key flute, all may. */
	@Test
	void lowNotesThatMoveNothingAreFound() {
		assertEquals(List.of("G4"), FingeringReview.of(THREE,
				List.of(note("D4", 6200, "1"), note("G4", 6700), note("C♯5", 7300), note("G♯4", 6800, "2"))).idle());
		assertEquals(List.of(), FingeringReview.of(THREE,
				List.of(note("D4", 6200, "1"), note("C♯5", 7300), note("D5", 7400, "2"))).idle());
		assertEquals(List.of(), FingeringReview.of(THREE, List.of(note("D4", 6200, "1"), note("E4", 6400))).idle());
		assertEquals(List.of(), FingeringReview.of(THREE, List.of(note("G4", 6700))).idle());
	}

	@Test
	void notesLessThanAWholeToneApartNeedOtherHoles() {
		FingeringReview review = FingeringReview.of(THREE, List.of(note("D4", 6200, "1"), note("D4 +50", 6250, "side"),
				note("D5", 7400, "1"), note("E4", 6400, "1"), note("D♯4", 6300, "2"), note("D4/2", 6200, "side")));
		assertEquals(List.of(new Alike("D4", "D4 +50"), new Alike("D4 +50", "E4"), new Alike("D4 +50", "D4/2")),
				review.alike());
	}

	@Test
	void notesAreNotComparedWhereNoHoleIsKnown() {
		Mechanism keysAlone = new Mechanism(THREE.keys(), List.of(), THREE.touches(), THREE.links());
		assertEquals(List.of(), FingeringReview.of(keysAlone, List.of(note("D4", 6200, "1"), note("E♭4", 6300, "2")))
				.alike());
	}

	@Test
	void notesOfUnknownPitchAreNotCompared() {
		TriedFingering unknown = new TriedFingering("?", OptionalInt.empty(), Pressing.of("1"));
		assertEquals(List.of(), FingeringReview.of(THREE, List.of(note("D4", 6200, "1"), unknown)).alike());
	}

	@Test
	void oneNameForTwoFingeringsIsRefused() {
		assertThrows(IllegalArgumentException.class,
				() -> FingeringReview.of(THREE, List.of(note("D4", 6200, "1"), note("D4", 6200, "2"))));
	}

	private static TriedFingering note(String name, int cents, String... touches) {
		return new TriedFingering(name, OptionalInt.of(cents), Pressing.of(touches));
	}
}
