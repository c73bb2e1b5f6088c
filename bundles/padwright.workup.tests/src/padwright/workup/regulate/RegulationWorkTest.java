package padwright.workup.regulate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

import padwright.engine.coupling.CircularCouplingException;
import padwright.engine.coupling.Coupling;
import padwright.engine.coupling.Regulation;
import padwright.engine.coupling.Upset;
import padwright.engine.length.Length;
import padwright.model.SignedMeasure;
import padwright.model.keysystem.AdjusterKind;
import padwright.model.keysystem.Key;
import padwright.model.plan.CouplingSide;
import padwright.model.plan.KeyService;
import padwright.model.plan.Round;
import padwright.workup.DemoPlan;

class RegulationWorkTest {

	private final DemoPlan demo = new DemoPlan();
	private Key fs;
	private Key f;
	private Key e;

	@BeforeEach
	void linkedKeys() {
		e = demo.key("E");
		f = demo.key("F");
		fs = demo.key("Fs");
		demo.couple(f, fs, demo.screw("UNM 1.00"));
		demo.couple(e, f, demo.adjuster(AdjusterKind.CORK));
	}

	@Test
	void drivenKeysComeFirst() {
		assertEquals(List.of("F > Fs", "E > F"), work().steps().stream().map(RegulationStep::coupling)
				.map(Coupling::toString).toList());
	}

	@Test
	void lightIsCuredByTheThreadOrByFilm() {
		demo.light(f, fs, "5", CouplingSide.DRIVEN);
		demo.light(e, f, "1.5", CouplingSide.DRIVER);
		List<Optional<Regulation>> found = work().steps().stream().map(RegulationStep::found).toList();
		// 5 thou of 0.25 mm a turn (UNM 1.00, Machinery's Handbook) is 0.508 turns.
		assertEquals("183° in (6.1 clock hours)", AdjustmentWords.of(found.get(0).orElseThrow().adjustment()));
		assertEquals(Length.thou("-1.5"), found.get(1).orElseThrow().travel());
		assertEquals("take away 1 + 0.5 thou of film", AdjustmentWords.of(found.get(1).orElseThrow().adjustment()));
	}

	@Test
	void aPairWithoutANoteHasNothingFound() {
		demo.light(f, fs, "5", CouplingSide.DRIVEN);
		assertEquals(Optional.empty(), work().steps().get(1).found());
	}

	@Test
	void aLeverIsRegulatedAfterItsKeysButHasNoPadThatStaysOpen() {
		Key lever = demo.key("Lever");
		lever.setHole(null);
		demo.couple(lever, e, demo.adjuster(AdjusterKind.CORK));
		assertEquals(List.of("F > Fs", "E > F", "Lever > E"), work().steps().stream().map(RegulationStep::coupling)
				.map(Coupling::toString).toList());
		demo.felt(demo.row(fs), ". . 1 .");
		Length sooner = work().changes().get(0).total();
		List<Upset> underLever = work().upsets().stream().filter(upset -> upset.driver().equals("Lever")).toList();
		assertEquals(List.of(new Upset("Lever", "E", sooner), new Upset("Lever", "F", sooner)), underLever);
	}

	@Test
	void solvedPiecesUnderADrivenKeyHoldEveryDriverUp() {
		demo.felt(demo.row(fs), ". . 1 .");
		RegulationWork work = work();
		Length sooner = work.changes().get(0).total();
		assertEquals(List.of(new BedChange("Fs", Length.ZERO, sooner)), work.changes());
		assertEquals(1, sooner.signum());
		assertEquals(List.of(new Upset("E", "E", sooner), new Upset("E", "F", sooner), new Upset("F", "F", sooner)),
				work.upsets());
	}

	/** A key that meets its rim at one place is stopped by film there, and hardly by film where it was open. */
	@Test
	void aKeyIsStoppedWhereItTouchesNotByTheMeanOfItsFilm() {
		KeyService row = demo.row(fs);
		Round round = demo.felt(row, ". . 2 .");
		demo.shim(round, "1", "5", "7");
		Length open = work().changes().stream().map(BedChange::byFilm).reduce(Length.ZERO, Length::plus);
		round.getPieces().clear();
		demo.shim(round, "1", "11", "1");
		Length touching = work().changes().get(0).byFilm();
		assertTrue(touching.isLongerThan(open.plus(Length.thou("0.2"))), touching + " and " + open);
	}

	/** With every clearance f less by d, φ = min f / w is less by d / w of where it touches, here between its extremes. */
	@Test
	void aChangeOfTheFullShimsCountsByWhereTheKeyTouches() {
		Round round = demo.felt(demo.row(fs), ". . 1 .");
		round.setFull(SignedMeasure.valueOf("+1 thou"));
		double sooner = work().changes().get(0).byFilm().inThou();
		assertTrue(sooner > 0.6 && sooner < 2.4, "sooner by " + sooner);
	}

	@Test
	void piecesThatTheLastReadingsShowAreNoChange() {
		KeyService row = demo.row(fs);
		demo.shim(demo.felt(row, ". . 1 ."), "2", "3", "9");
		demo.felt(row, ". . . .").setLevel(true);
		assertEquals(List.of(), work().changes());
		assertEquals(List.of(), work().upsets());
	}

	@Test
	void aStackThatIsOffIsTakenToBeReplaced() {
		KeyService row = demo.row(fs);
		row.setEmpty(demo.thicknesses("15 15 15 15"));
		row.setStack(demo.thicknesses("7.5 5"));
		BedChange change = work().changes().get(0);
		assertEquals(Length.ZERO, change.byFilm());
		assertTrue(change.byStack().isLongerThan(Length.thou("1.5")) && change.byStack().isShorterThan(Length.thou("6.5")),
				change.toString());
		assertTrue(work().upsets().contains(new Upset("F", "F", change.byStack())));
	}

	@Test
	void aStackWithinTheSeatStays() {
		KeyService row = demo.row(fs);
		row.setEmpty(demo.thicknesses("15 15 15 15"));
		row.setStack(demo.thicknesses("7.5 7"));
		assertEquals(List.of(), work().changes());
	}

	@Test
	void aCircleNamesItsKeys() {
		demo.couple(fs, e, demo.screw("8 BA"));
		CircularCouplingException circle = assertThrows(CircularCouplingException.class, this::work);
		assertEquals(List.of("E", "F", "Fs"), circle.keys());
	}

	private RegulationWork work() {
		return RegulationWork.of(demo.solved());
	}
}
