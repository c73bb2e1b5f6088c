package padwright.views.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;

import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

import padwright.engine.length.Length;
import padwright.language.edit.TextEdit;
import padwright.views.Bench;
import padwright.views.Palette;
import padwright.views.Shown;
import padwright.views.clock.ClockProposal;
import padwright.views.clock.ClockState;
import padwright.workup.service.KeyJob;

class BenchSessionTest {

	private Bench bench;
	private String key;
	private int steps;
	private final Deque<List<TextEdit>> edits = new ArrayDeque<>();
	private final List<Told> told = new ArrayList<>();
	private final List<KeyJob> toSolve = new ArrayList<>();
	private final JobClock time = new JobClock(() -> 0);
	private final BenchSession session = new BenchSession(edits::add, BenchKeys.standard(), time);

	@AfterEach
	void asAtFirst() {
		Shown.setTypedInFull(false);
	}

	private void begin(Bench plan, String first) {
		bench = plan;
		key = first;
		session.onGo(next -> key = next);
		session.onSolve(toSolve::add);
		session.onTold(told::add);
		session.show(ClockState.of(bench.row(key)));
	}

	/** As a workbench does it: what is written is read again, and the key that is gone to is shown, all in their time. */
	private void settle() {
		String shown;
		do {
			shown = key;
			while (!edits.isEmpty()) {
				bench.apply(edits.poll());
				steps++;
				session.show(ClockState.of(bench.row(key)));
			}
			session.show(ClockState.of(bench.row(key)));
		} while (!shown.equals(key) || !edits.isEmpty());
	}

	private void press(String strokes) {
		strokes.chars().forEach(stroke -> assertTrue(session.press(Character.toString(stroke))));
	}

	@Test
	void aKeyOfEightHoursTakesEightStrokes() {
		begin(Bench.ofEightHours("key B\nkey A"), "B");
		String strokes = "...51..5";
		press(strokes);
		settle();
		assertEquals(8, strokes.length());
		assertEquals("key B felt . . . 0.5 1 . . 0.5\nkey A", bench.rows());
		assertEquals("A", key, "no stroke is needed to go on");
	}

	@Test
	void aKeyThatDragsAllRoundTakesOneStrokeAndOneStepOfUndo() {
		begin(Bench.ofEightHours("key B\nkey A"), "B");
		press("*");
		settle();
		assertEquals("key B felt . . . . . . . .\nkey A", bench.rows());
		assertEquals(1, steps);
		assertEquals("A", key);
	}

	@Test
	void aWholeFluteIsTypedInOneGoWithoutWaitingForTheText() {
		begin(new Bench("key A\nkey B\nkey C"), "B");
		press(".5..1...**");
		settle();
		assertEquals("key A felt 1 . . .\nkey B felt . 0.5 . .\nkey C felt . . . .", bench.rows(),
				"B comes before A, which closes it");
		assertEquals("C", key, "all is read: nowhere to go, and the last stroke says nothing");
		assertEquals(Told.Tone.WRONG, told.get(told.size() - 1).tone());
	}

	@Test
	void anIndicatorTypesFigures() {
		begin(new Bench("key B\nkey A"), "B");
		press("0.52");
		assertTrue(session.press("Enter"));
		assertTrue(session.press("Enter"), "a second line end");
		press("...");
		settle();
		assertEquals("key B felt 0.5 . . .\nkey A", bench.rows());
		Shown.setTypedInFull(true);
		for (String reading : List.of("1.2", ".", "0.0123", "2")) {
			press(reading);
			session.press("Enter");
		}
		settle();
		assertEquals("key B felt 0.5 . . .\nkey A felt 1 . . 2", bench.rows());
	}

	@Test
	void backGoesToTheHourAndTheKeyBefore() {
		begin(new Bench("key B\nkey A"), "B");
		press("*");
		settle();
		session.press("Backspace");
		settle();
		assertEquals("B", key);
		session.press("Backspace");
		press("5");
		settle();
		assertEquals("key B felt . . . 0.5\nkey A", bench.rows());
		assertEquals("A", key);
	}

	@Test
	void nextAndPreviousKeysAreInTheOrderOfWork() {
		begin(new Bench("key A\nkey B\nkey C"), "B");
		press("+");
		settle();
		assertEquals("A", key);
		press("++");
		settle();
		assertEquals("C", key);
		assertTrue(BenchPicture.of(session).note().contains("last"));
		press("/");
		settle();
		assertEquals("A", key);
	}

	@Test
	void aRowOfNoKeyOfTheInstrumentIsPassedOver() {
		begin(new Bench("key Z\nkey A\nkey B"), "B");
		press("+");
		settle();
		assertEquals("A", key);
		press("+");
		settle();
		assertEquals("A", key);
		assertTrue(BenchPicture.of(session).place().startsWith("2 of 2"), BenchPicture.of(session).place());
	}

	@Test
	void whatAKeyWantsIsAskedAsSoonAsItIsReadAndNotedWithOneStroke() {
		begin(new Bench("key B felt . 1 2"), "B");
		assertEquals(List.of(), toSolve);
		press("5");
		settle();
		assertFalse(toSolve.isEmpty());
		assertTrue(session.isSolving());
		ClockProposal answer = ClockProposal.solve(toSolve.get(0), row -> {
		});
		session.propose(answer);
		BenchPicture shown = BenchPicture.of(session);
		assertEquals(answer.toDo().orElseThrow(), shown.toDo());
		assertEquals(2, shown.chances().size());
		assertTrue(shown.workButtons().stream().anyMatch(push -> push.id().equals("PLACED") && push.offered()));
		session.press("Enter");
		settle();
		assertTrue(bench.rows().startsWith("key B felt . 1 2 0.5 "), bench.rows());
		assertTrue(session.isAnswered());
		session.press("Enter");
		press("*");
		settle();
		assertTrue(bench.rows().endsWith(" felt . . . ."), bench.rows());
	}

	@Test
	void aPieceOfAnEarlierRoundIsTakenOut() {
		begin(new Bench("key B felt . 1 2 0.5 shim 1 from 2 to 4 felt . . 1 ."), "B");
		session.touch("OUT");
		settle();
		assertEquals("key B felt . 1 2 0.5 shim 1 from 2 to 4 felt . . 1 . out 1 from 2 to 4", bench.rows());
		session.touch("OUT");
		assertEquals(0, edits.size());
	}

	@Test
	void aFingerDoesWhatKeysDo() {
		begin(new Bench("key B\nkey A"), "B");
		for (String id : List.of("leaf-5", "DRAGS", "hour-12", "leaf-1")) {
			session.touch(id);
			settle();
		}
		assertEquals("key B felt 1 .\nkey A", bench.rows());
		session.touch("DRAGS_LIGHTLY");
		assertEquals(Told.Tone.WRONG, told.get(told.size() - 1).tone());
	}

	@Test
	void theClockOfTheJobStandsStillAndGoesOn() {
		long[] now = {0};
		JobClock clock = new JobClock(() -> now[0]);
		now[0] = 61_000_000_000L;
		clock.toggle();
		now[0] = 90_000_000_000L;
		assertEquals("1:01", clock.shown());
		assertFalse(clock.isRunning());
		clock.toggle();
		now[0] += 3_600_000_000_000L;
		assertEquals("1:01:01", clock.shown());
		begin(new Bench("key B"), "B");
		session.press("Space");
		assertFalse(time.isRunning());
	}

	@Test
	void whatIsHeardTellsDraggingFromSliding() {
		begin(new Bench("key B\nkey A"), "B");
		told.clear();
		press(".57");
		assertEquals(List.of(Told.Tone.DRAGS, Told.Tone.SLIDES), told.stream().map(Told::tone).toList());
		assertTrue(told.get(1).words().contains("0.5"), told.get(1).words());
	}

	@Test
	void anAnswerForAnotherKeyIsPassedOver() {
		begin(new Bench("key B felt . 1 2 0.5\nkey A felt . 1 2 0.5"), "B");
		session.propose(ClockProposal.solve(bench.row("A"), row -> {
		}));
		assertEquals(Optional.empty(), session.clock().proposal());
	}

	@Test
	void anIndicatorReadsTheHourInHand() {
		begin(new Bench("key B\nkey A"), "B");
		for (String thou : List.of("0.2", "0.5", "1.2", "0.62")) {
			session.measured(Length.thou(thou));
		}
		settle();
		assertTrue(bench.rows().contains("key B felt . 0.5 1 0.5"), bench.rows());
		assertEquals("A", session.label());
		session.measured(Length.thou("-0.1"));
		assertTrue(session.clock().status().contains("below zero"), session.clock().status());
		session.notMeasured("ERR");
		assertTrue(session.clock().status().contains("ERR"), session.clock().status());
		assertTrue(bench.rows().endsWith("key A"), bench.rows());
	}

	@Test
	void whatIsTypedByHandIsNotMixedWithWhatAnIndicatorSends() {
		begin(new Bench("key B\nkey A"), "B");
		press("0.");
		session.measured(Length.thou("0.5"));
		assertEquals("0.", session.clock().typing().entry().typed());
		session.setIndicator("no indicator at COM3");
		assertTrue(session.draw(Palette.light(), 300, 180).toString().contains("no indicator at"));
	}
}
