package padwright.views.clock;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.junit.jupiter.api.Test;

import padwright.drawing.scene.Bounds;
import padwright.drawing.scene.Scene;
import padwright.engine.clock.ClockHour;
import padwright.engine.film.PartialShim;
import padwright.engine.length.Length;
import padwright.engine.seating.SeatAnswer;
import padwright.language.edit.TextEdit;
import padwright.views.Bench;
import padwright.views.Palette;
import padwright.views.scenes.Targets;

class ClockSessionTest {

	private Bench bench;
	private final List<List<TextEdit>> edits = new ArrayList<>();
	private final ClockSession session = new ClockSession(edits::add);

	private void begin(String row) {
		bench = new Bench(row);
		show();
	}

	private void show() {
		session.show(ClockState.of(bench.row("A")));
	}

	/** As a workbench does it: every edit goes into the text, which is read again. */
	private void settle() {
		while (!edits.isEmpty()) {
			bench.apply(edits.remove(0));
			show();
		}
	}

	private void type(String text) {
		text.chars().forEach(character -> assertTrue(session.type((char) character)));
		session.typing().enter();
	}

	@Test
	void readingsTypedInTurnStandInTheText() {
		begin("key A empty 15 // remark");
		for (String reading : List.of(".", "0.5", "1", "0.8")) {
			type(reading);
			assertEquals(1, edits.size());
			settle();
		}
		assertEquals("key A empty 15 felt . 0.5 1 0.5 // remark", bench.rows());
		assertTrue(session.status().contains("0.8"));
	}

	@Test
	void whatNoFeelerTellsStaysTypedAndIsNotWritten() {
		begin("key A");
		for (String typed : List.of("70", "01.2.3")) {
			type(typed);
			assertTrue(edits.isEmpty());
			assertTrue(session.status().contains(typed), session.status());
			session.typing().back();
			assertTrue(session.typing().enter(), "what was typed is still there");
		}
		type("0.5");
		settle();
		assertEquals("key A felt 0.5", bench.rows());
	}

	@Test
	void nothingThatIsTypedIsCutOff() {
		begin("key A");
		"0.5000000000".chars().forEach(character -> assertTrue(session.type((char) character)));
		assertEquals("", session.status());
		assertTrue(session.type('9'));
		assertTrue(session.status().contains("0.5000000000"), session.status());
	}

	@Test
	void nothingTypedFastIsLost() {
		begin("key A");
		type("0.5");
		type("1");
		type(".");
		assertEquals(1, edits.size());
		settle();
		type("0.5");
		settle();
		assertEquals("key A felt 0.5 1 . 0.5", bench.rows());
	}

	@Test
	void whatWasReadBeforeAChangeIsNotTakenForItsResult() {
		begin("key A");
		ClockState before = session.state();
		type("0.5");
		type("1");
		session.show(before);
		assertEquals(1, edits.size());
		settle();
		assertEquals("key A felt 0.5 1", bench.rows());
	}

	@Test
	void aChangeThatWasRefusedIsTakenBack() {
		begin("key A felt . 0.5");
		type("1");
		edits.clear();
		show();
		assertEquals(session.state().readings(), ClockState.of(bench.row("A")).readings());
		session.typing().up();
		session.typing().down();
		type("2");
		settle();
		assertEquals("key A felt . 0.5 2", bench.rows());
	}

	@Test
	void backspaceTakesBackACharacterAndThenGoesBackAnHour() {
		begin("key A felt . 0.5 1");
		session.type('7');
		session.typing().back();
		assertFalse(session.typing().enter());
		session.typing().back();
		type("2");
		settle();
		assertEquals("key A felt . 0.5 2", bench.rows());
	}

	@Test
	void theHourThatIsClickedIsTypedNext() {
		begin("key A felt . 0.5 1 .");
		session.typing().goTo(ClockHour.ofHour(3));
		type("1");
		settle();
		assertEquals("key A felt . 1 1 .", bench.rows());
		begin("key A felt .");
		session.typing().goTo(ClockHour.ofHour(9));
		type("1");
		settle();
		assertEquals("key A felt . 1", bench.rows());
	}

	@Test
	void whatIsNoReadingIsToldAndChangesNothing() {
		begin("key A felt .");
		type("01.2.3");
		assertTrue(session.status().contains("01.2.3"));
		assertEquals(List.of(), edits);
		assertFalse(session.type('x'));
	}

	@Test
	void anotherRoundLeavesTheOneBefore() {
		begin("key A felt . 0.5 . 1 shim 0.5 from 8 to 10");
		session.anotherRound();
		assertEquals(1, session.earlierCount());
		type(".");
		settle();
		type("0.5");
		settle();
		assertEquals("key A felt . 0.5 . 1 shim 0.5 from 8 to 10 felt . 0.5", bench.rows());
	}

	@Test
	void piecesMoveByHalfHoursGrowAndGo() {
		begin("key A felt . 0.5 . 1 shim 0.5 from 8 to 10, 1 from 2 to 4");
		session.select(Optional.of(0));
		session.shift(false, -1);
		settle();
		session.shift(true, 2);
		settle();
		session.thicken(1);
		settle();
		assertEquals("key A felt . 0.5 . 1 shim 1 from 7.5 to 11, 1 from 2 to 4", bench.rows());
		session.remove();
		settle();
		assertEquals("key A felt . 0.5 . 1 shim 1 from 2 to 4", bench.rows());
		session.add();
		settle();
		assertTrue(bench.rows().matches("key A felt . 0.5 . 1 shim 1 from 2 to 4, 0.5 from (7.5|8|8.5) to (9.5|10|10.5)"),
				bench.rows());
		assertEquals(Optional.of(1), session.selected());
	}

	@Test
	void aDraggedEndIsWrittenOnceWhenItIsLetGo() {
		begin("key A felt . 0.5 . 1 shim 0.5 from 8 to 10");
		session.select(Optional.of(0));
		Scene scene = session.draw(Palette.light(), 1.5);
		Bounds from = Targets.of(scene).named("from-0").orElseThrow().bounds();
		Bounds noon = Targets.of(scene).named("reading-12").orElseThrow().bounds();
		session.drag(0, true, from.centreX(), from.centreY());
		session.drag(0, true, noon.centreX() + 0.2, noon.centreY());
		assertEquals(List.of(), edits);
		session.drop();
		assertEquals(1, edits.size());
		settle();
		assertEquals("key A felt . 0.5 . 1 shim 0.5 from 8 to 12", bench.rows());
	}

	@Test
	void aProposalIsShownBeforeItIsApplied() {
		begin("key A felt . 1 2 0.5");
		ClockProposal proposal = ClockProposal.solve(bench.row("A"), job -> {
		});
		session.propose(Optional.of(proposal));
		assertEquals(List.of(), edits);
		assertTrue(session.proposal().isPresent());
		session.apply();
		assertEquals(1, edits.size());
		settle();
		assertEquals(proposal.pieces(), ClockState.of(bench.row("A")).pieces());
		assertFalse(session.proposal().isPresent());
		assertEquals(proposal.answer().orElseThrow().chance(),
				session.state().left(session.pieces()).orElseThrow().chance(), 0.15);
	}

	/** What the solver made of it, as it would be written whatever it is. */
	@Test
	void aProposalIsWrittenWithAllThatIsToBeDone() {
		begin("key A felt . 1 2 0.5 shim 1 from 2 to 4 felt . . 1 .");
		PartialShim earlier = session.state().earlier().get(0);
		SeatAnswer solved = ClockProposal.solve(bench.row("A"), job -> {
		}).answer().orElseThrow();
		SeatAnswer seat = new SeatAnswer(List.of(), List.of(earlier), Length.thou("0.5"), Optional.empty(), 0.1, 0.5,
				solved.gapNow(), solved.gapAfter(), solved.limit(), Optional.empty(), List.of(), List.of(), true);
		session.propose(Optional.of(new ClockProposal(bench.row("A"), Optional.of(seat), List.of())));
		session.apply();
		settle();
		assertEquals("key A felt . 1 2 0.5 shim 1 from 2 to 4 felt . . 1 . full +0.5 out 1 from 2 to 4", bench.rows());
		assertEquals(List.of(), session.state().earlier());
	}

	@Test
	void aKeyThatIsHeldOffHasNothingToApply() {
		begin("key A felt 1 1 1 1");
		session.propose(Optional.of(ClockProposal.solve(bench.row("A"), job -> {
		})));
		assertFalse(session.proposal().isPresent());
		assertTrue(session.status().contains("held off") && session.status().contains("A > B\u266d"), session.status());
	}

	@Test
	void aLevelPadIsNotedAsSuch() {
		begin("key A felt . . . .");
		session.propose(Optional.of(ClockProposal.solve(bench.row("A"), job -> {
		})));
		session.apply();
		settle();
		assertEquals("key A felt . . . . shim none", bench.rows());
	}

	@Test
	void aDashIsTypedWhereReadingsAreGraded() {
		begin("key A felt .");
		assertFalse(session.type('-'));
	}

	@Test
	void aReadingTakesAProposalAway() {
		begin("key A felt . 1 2 0.5");
		session.propose(Optional.of(ClockProposal.solve(bench.row("A"), job -> {
		})));
		assertTrue(session.type('.'));
		assertTrue(session.proposal().isPresent(), "all hours are read: the stroke says nothing");
		session.typing().goTo(ClockHour.ofHour(9));
		type(".");
		assertFalse(session.proposal().isPresent());
	}

	@Test
	void aStrokeIsAReading() {
		begin("key A");
		"5.12".chars().forEach(stroke -> assertTrue(session.type((char) stroke)));
		assertTrue(session.typing().isAllRead());
		settle();
		assertEquals("key A felt 0.5 . 1 2", bench.rows());
	}

	@Test
	void noStrokeGoesIntoARowThatIsRead() {
		begin("key A felt 0.5 . 1 2");
		assertTrue(session.type('1'));
		assertTrue(session.type('*'));
		assertEquals(List.of(), edits);
		session.typing().back();
		session.type('.');
		settle();
		assertEquals("key A felt 0.5 . 1 .", bench.rows());
	}

	@Test
	void oneStrokeAndOneStepOfUndoSayThatAllDrags() {
		begin("key A");
		session.type('1');
		settle();
		session.type('*');
		assertEquals(1, edits.size());
		settle();
		assertEquals("key A felt 1 . . .", bench.rows());
	}

	@Test
	void whatCannotBeWrittenNowIsWrittenLater() {
		bench = new Bench("key A");
		List<Boolean> open = new ArrayList<>(List.of(false, false, true));
		ClockSession kept = new ClockSession(change -> {
			boolean written = open.remove(0);
			if (written) {
				edits.add(change);
			}
			return written;
		});
		kept.show(ClockState.of(bench.row("A")));
		kept.type('5');
		kept.type('1');
		kept.show(ClockState.of(bench.row("A")));
		assertFalse(kept.isSettled());
		kept.show(ClockState.of(bench.row("A")));
		bench.apply(edits.remove(0));
		kept.show(ClockState.of(bench.row("A")));
		assertTrue(kept.isSettled());
		assertEquals("key A felt 0.5 1", bench.rows());
	}

	@Test
	void theLastHourGoesOnAndNoStrokeIsLostOnTheWay() {
		bench = new Bench("key A\nkey B");
		show();
		List<String> gone = new ArrayList<>();
		session.typing().onAllRead(row -> Optional.of("B"), gone::add);
		"....5.12".chars().forEach(stroke -> assertTrue(session.type((char) stroke)));
		assertEquals(List.of(), gone, "the text comes first");
		settle();
		assertEquals(List.of("B"), gone);
		session.show(ClockState.empty());
		show();
		assertEquals(List.of("B"), gone);
		session.show(ClockState.of(bench.row("B")));
		while (!edits.isEmpty()) {
			bench.apply(edits.remove(0));
			session.show(ClockState.of(bench.row("B")));
		}
		assertEquals("key A felt . . . .\nkey B felt 0.5 . 1 2", bench.rows());
	}

	@Test
	void whatCannotBeSolvedSaysWhy() {
		begin("key A");
		session.propose(Optional.of(ClockProposal.solve(bench.row("A"), job -> {
		})));
		assertFalse(session.status().isEmpty());
		assertFalse(session.proposal().isPresent());
	}

	@Test
	void anotherKeyBeginsAnew() {
		bench = new Bench("key A felt . 0.5\nkey B felt .");
		show();
		session.type('7');
		session.show(ClockState.of(bench.row("B")));
		type("1");
		bench.apply(edits.remove(0));
		assertEquals("key A felt . 0.5\nkey B felt . 1", bench.rows());
	}

	@Test
	void noKeyTakesNoReading() {
		assertFalse(session.type('1'));
		session.add();
		session.anotherRound();
		session.apply();
		assertEquals(List.of(), edits);
		assertEquals(List.of(), Targets.of(session.draw(Palette.dark(), 1)).all());
	}
}
