package padwright.views.layout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.Set;

import org.junit.jupiter.api.Test;

import padwright.model.keysystem.Purpose;
import padwright.views.fingering.FingeringSession;

class FingeringSessionTest {

	private static final String FLUTE = """
			unit mm
			system Flute {
				joint body long 300 bore 19
				touch L1
				touch L2
				touch R4
				hole H 7 by L1 at 60
				key A open by L2 closes B hole 13 cup 16 at 100
				key B open hole 13 cup 16 at 140
				key C closed by R4 hole 13 cup 16 at 200
				note C4 : L1 L2
				note D♯4 : L1
			}
			""";

	private final DrawnSystem flute = new DrawnSystem(FLUTE);
	private final FingeringSession session = new FingeringSession();

	FingeringSessionTest() {
		session.show(flute.editing.layout());
	}

	@Test
	void whatATouchMovesIsShown() {
		session.press("L2", false);
		assertEquals(Set.of("touch:L2"), session.motion().pressed());
		assertEquals(Set.of("key:A", "key:B"), session.motion().moved());
		assertEquals(Set.of("key:A", "key:B", "key:C"), session.motion().shut());
		assertEquals(List.of("H"), session.open());
		session.press("L2", false);
		assertFalse(session.isPressed("L2"));
		session.press("R4", false);
		assertEquals(Set.of("key:C"), session.motion().moved());
		assertTrue(session.motion().shut().isEmpty());
	}

	@Test
	void allNotesAreWalkedThrough() {
		session.walk(1);
		assertEquals(Optional.of("C4"), session.note());
		assertTrue(session.isPressed("L1") && session.isPressed("L2"));
		session.walk(1);
		assertEquals(Optional.of("D♯4"), session.note());
		assertFalse(session.isPressed("L2"));
		session.walk(1);
		assertEquals(Optional.of("C4"), session.note());
		session.walk(-1);
		assertEquals(Optional.of("D♯4"), session.note());
	}

	@Test
	void whatIsMissingUpTheScaleIsListed() {
		assertEquals(List.of("C♯4", "D4"), session.missing());
	}

	@Test
	void whatIsPressedIsWrittenDown() {
		session.press("L1", true);
		session.press("R4", false);
		flute.write(session.write("D4", Optional.empty(), Purpose.TRILL));
		assertTrue(flute.text().contains("\tnote D♯4 : L1\n\tnote D4 trill : half L1 R4\n"), flute.text());
		assertFalse(session.canBeNote("H4"));
	}
}
