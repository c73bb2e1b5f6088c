package padwright.views.layout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.StringWriter;
import java.util.List;
import java.util.Optional;

import org.junit.jupiter.api.Test;

import padwright.drawing.svg.SvgWriter;
import padwright.engine.acoustics.Resonance;
import padwright.engine.mechanism.Pressing;
import padwright.views.Palette;
import padwright.views.sound.CurveHeard;
import padwright.views.sound.ScaleHeard;
import padwright.views.sound.SoundScene;
import padwright.views.sound.SoundSession;
import padwright.views.sound.SoundWork;

class SoundSessionTest {

	private static final String FLUTE = """
			unit mm
			system Flute {
				pitch 442 Hz at 20 °C
				joint body long 262 bore 19 embouchure 12 by 10 chimney 5 at 20 cork 17
				touch L1
				touch L2
				hole H 7 chimney 4 by L1 at 140
				key A open by L2 hole 13 chimney 2.5 cup 16 rise 3 at 215
				note D5 : L1 L2
				note E5 : L1
				note A5 trill :
			}
			""";

	private final DrawnSystem flute = new DrawnSystem(FLUTE);
	private final SoundSession session = new SoundSession();
	private final SoundWork work = new SoundWork();

	SoundSessionTest() {
		read();
	}

	private void read() {
		session.show(flute.editing.layout().system(), flute.editing.layout());
		workOut();
	}

	private void workOut() {
		session.accept(work.curve(session.wish().orElseThrow()));
		session.accept(work.scale(session.wish().orElseThrow()));
	}

	private double cents(String note) {
		return session.note(note).orElseThrow().sound().cents().orElseThrow();
	}

	@Test
	void theFirstNoteIsChosenAndTheOthersAreWalkedThrough() {
		assertEquals(Optional.of("D5"), session.chosen());
		session.walk(1);
		assertEquals(Optional.of("E5"), session.chosen());
		session.walk(-2);
		assertEquals(Optional.of("A5"), session.chosen());
		session.walk(1);
		assertEquals(Optional.of("D5"), session.chosen());
	}

	/** The two are worked out each in its own way: the scale about each note, the curve over the whole range. */
	@Test
	void theCurveHasTheResonanceOfTheNote() {
		for (String note : List.of("D5", "E5", "A5")) {
			session.choose(note);
			workOut();
			CurveHeard heard = session.curve().orElseThrow();
			assertEquals(cents(note), heard.cents().orElseThrow(), 1e-3);
			assertEquals(session.note(note).orElseThrow().sound().played().orElseThrow().decibels(),
					heard.played().orElseThrow().decibels(), 1e-3);
		}
		assertEquals(442, session.curve().orElseThrow().axis().hertz(69), 1e-9);
	}

	@Test
	void aHoleThatIsDraggedSoundsThereAtOnceAndAsIfItWereWritten() {
		double before = cents("E5");
		double fixed = cents("D5");
		String said = session.words();
		flute.editing.grab(Optional.of("key:A"), flute.x("key:A"), flute.y("key:A"), false);
		flute.editing.drag(flute.x("key:A") - 6, flute.y("key:A"), 0);
		assertTrue(session.drag(flute.editing.shown()));
		assertFalse(session.drag(flute.editing.shown()));
		session.choose("E5");
		workOut();
		double there = cents("E5");
		assertTrue(there > before + 20, before + " to " + there);
		assertEquals(fixed, cents("D5"), 2);
		assertTrue(session.words().contains("as written"), session.words());
		assertNotEquals(said, session.words());
		flute.editing.drop(Optional.empty());
		assertTrue(flute.text().contains("at 209"), flute.text());
		read();
		assertEquals(there, cents("E5"), 1e-6);
		assertFalse(session.isDragging());
		assertEquals(Optional.of("E5"), session.chosen());
	}

	/** Past the other hole it is the upper one; past the end of the tube there is none. */
	@Test
	void aHoleMayBeDraggedPastOthersButNotOffTheTube() {
		flute.editing.grab(Optional.of("key:A"), flute.x("key:A"), flute.y("key:A"), false);
		flute.editing.drag(flute.x("key:A") - 90, flute.y("key:A"), 0);
		session.drag(flute.editing.shown());
		workOut();
		assertEquals(3, session.notes().size());
		flute.editing.drag(flute.x("key:A") + 400, flute.y("key:A"), 0);
		session.drag(flute.editing.shown());
		workOut();
		assertTrue(session.notes().isEmpty());
		assertTrue(session.words().contains("can not sound"), session.words());
	}

	@Test
	void whatIsPressedCountsInsteadOfANote() {
		session.press(Optional.of("E5"), Pressing.of("L1"));
		assertEquals(Optional.of("E5"), session.chosen());
		session.press(Optional.empty(), Pressing.of("L2"));
		workOut();
		assertEquals(Optional.empty(), session.chosen());
		CurveHeard pressed = session.curve().orElseThrow();
		Resonance first = pressed.played().orElseThrow();
		assertEquals(first, pressed.curve().orElseThrow().resonances().get(0));
		assertTrue(Math.abs(pressed.cents().orElseThrow()) <= 50);
		assertTrue(session.words().startsWith("As pressed: "), session.words());
		session.press(Optional.empty(), Pressing.of("L2", "Gone"));
		workOut();
		assertEquals(first, session.curve().orElseThrow().played().orElseThrow());
	}

	@Test
	void anAnswerOfAnEarlierTextIsNotShown() {
		ScaleHeard earlier = work.scale(session.wish().orElseThrow());
		flute.drag("key:A", -6, 0);
		read();
		double now = cents("E5");
		session.accept(earlier);
		assertEquals(now, cents("E5"));
	}

	@Test
	void whatIsMissingIsToldInstead() {
		assertEquals("Open a key system, or a plan that names one.", new SoundSession().words());
		DrawnSystem bare = new DrawnSystem(DrawnSystem.FLUTE);
		session.show(bare.editing.layout().system(), bare.editing.layout());
		workOut();
		assertTrue(session.words().contains("chimney"), session.words());
		DrawnSystem silent = new DrawnSystem("unit mm\nsystem Tube {\n\tjoint body long 300 bore 19\n}\n");
		session.show(silent.editing.layout().system(), silent.editing.layout());
		workOut();
		assertTrue(session.words().contains("no fingering"), session.words());
		SoundScene.draw(session, Palette.light(), 1.5);
	}

	@Test
	void theDrawingNamesEveryNote() {
		for (double aspect : new double[] { 0.5, 1, 3 }) {
			StringWriter svg = new StringWriter();
			SvgWriter.write(svg, SoundScene.draw(session, Palette.dark(), aspect));
			for (String note : List.of("D5", "E5", "A5")) {
				assertTrue(svg.toString().contains("note:" + note), note);
			}
		}
	}
}
