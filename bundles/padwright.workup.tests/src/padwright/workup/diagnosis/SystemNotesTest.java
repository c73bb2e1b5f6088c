package padwright.workup.diagnosis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import java.util.Locale;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

import padwright.engine.diagnosis.NoteFingering;
import padwright.model.keysystem.AdjusterKind;
import padwright.model.keysystem.Key;
import padwright.model.keysystem.Posture;
import padwright.workup.DemoPlan;
import padwright.workup.words.Spoken;

class SystemNotesTest {

	private final DemoPlan demo = new DemoPlan();
	private Key e;
	private Key f;
	private Key fs;

	@BeforeEach
	void system() {
		e = demo.key("E");
		f = demo.key("F");
		fs = demo.key("Fs");
		Key ds = demo.key("Ds");
		ds.setPosture(Posture.CLOSED);
		demo.couple(f, fs, demo.adjuster(AdjusterKind.CORK));
		demo.note("E4", null, e, f);
		demo.note("F♯4", null, e, ds);
		demo.note("F♯4", "side", fs);
		demo.note("F♯4", null, f);
	}

	@Test
	void touchesKeysAndCouplingsCloseAndClosedKeysOpen() {
		assertEquals(new NoteFingering("E4", Set.of("E", "F", "Fs", "Ds")), notes().find("E4"));
		assertEquals(new NoteFingering("F♯4", Set.of("E")), notes().find("F♯4"));
	}

	@ParameterizedTest
	@ValueSource(strings = { "F♯4", "F#4", "Fs4", "Gb4", "G♭4", " F♯4 " })
	void anyNameOfThePitchMeansItsFirstFingering(String written) {
		assertEquals(Set.of("E"), notes().find(written).closedPads());
	}

	@Test
	void aSlashChoosesByLabelOrNumber() {
		assertEquals("F♯4/side", notes().find("Gb4/side").note());
		assertEquals(notes().find("F#4/SIDE"), notes().find("F#4/2"));
		assertEquals(new NoteFingering("F♯4/3", Set.of("F", "Fs", "Ds")), notes().find("F♯4/3"));
		assertEquals("F♯4", notes().find("F♯4/1").note());
		assertMessage("there is no fingering F♯4/trill; there are F♯4, F♯4/side, F♯4/3", "F♯4/trill");
	}

	@Test
	void aTouchMovesAllKeysThatItPresses() {
		e.getTouches().add(demo.touch(f));
		demo.press(demo.note("G4", null), demo.touch(f));
		assertEquals(new NoteFingering("G4", Set.of("E", "F", "Fs", "Ds")), notes().find("G4"));
	}

	@Test
	void aNameOfTheSystemNeedNotBeAPitch() {
		demo.note("Multi1", null, e);
		assertEquals(Set.of("E", "Ds"), notes().find("Multi1").closedPads());
	}

	@Test
	void unknownNotesNameNearOnes() {
		demo.note("C5", null, e);
		assertMessage("there is no note G4 in the key system; near are F♯4, E4, C5", "G4");
		assertMessage("there is no note H4 in the key system; near are E4, F♯4, C5", "H4");
	}

	@Test
	void aFingeringThatCannotBePressedSaysWhy() {
		Key stranger = new DemoPlan().key("X");
		demo.note("B4", null, stranger);
		assertMessage("note B4 cannot be fingered: the key system lacks X", "B4");
		assertEquals(List.of("E4", "F♯4", "F♯4/side", "F♯4/3"),
				notes().all().stream().map(NoteFingering::note).toList());
	}

	@Test
	void leversAreNoPads() {
		Key lever = demo.key("Lever");
		lever.setHole(null);
		demo.couple(lever, fs, demo.adjuster(AdjusterKind.CORK));
		demo.note("G4", null, lever);
		assertEquals(new NoteFingering("G4", Set.of("Fs", "Ds")), notes().find("G4"));
	}

	@Test
	void aNoteWhoseNameCouldNotBeReadIsLeftOut() {
		demo.note(null, null, e);
		assertEquals(4, notes().all().size());
		assertMessage("there is no note G4 in the key system; near are F♯4, E4", "G4");
	}

	@Test
	void aSystemWithoutFingeringsSaysSo() {
		demo.system.getFingerings().clear();
		assertTrue(assertThrows(UnknownNoteException.class, () -> notes().find("E4")).getMessage()
				.startsWith("the key system has no fingerings"));
	}

	@Test
	void whyANoteCannotBePlayedIsToldInTheLanguageOfWhoeverReadsIt() {
		UnknownNoteException unknown = assertThrows(UnknownNoteException.class, () -> notes().find("H9"));
		assertTrue(unknown.getMessage().startsWith("there is no note H9"), unknown.getMessage());
		String german = Spoken.in(Locale.GERMAN, unknown::getMessage);
		assertTrue(german.startsWith("im Klappensystem gibt es keinen Ton H9"), german);
	}

	private void assertMessage(String message, String written) {
		assertEquals(message,
				assertThrows(UnknownNoteException.class, () -> notes().find(written)).getMessage());
	}

	private SystemNotes notes() {
		return new SystemNotes(demo.service());
	}
}
