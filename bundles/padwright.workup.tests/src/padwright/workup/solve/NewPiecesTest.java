package padwright.workup.solve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.util.List;

import org.junit.jupiter.api.Test;

import padwright.engine.clock.Arc;
import padwright.engine.clock.ClockHour;
import padwright.engine.film.PartialShim;
import padwright.engine.length.Length;
import padwright.engine.levelling.LevellingSolution;
import padwright.model.plan.KeyService;
import padwright.workup.DemoPlan;

class NewPiecesTest {

	private final DemoPlan demo = new DemoPlan();
	private final KeyService row = demo.row(demo.key("F"));

	@Test
	void solvedPiecesAgreeWithTheEngine() {
		demo.felt(row, ". 1 2 0.5");
		LevelAnswer level = demo.solved().keys().get(0).level().orElseThrow();
		LevellingSolution engine = level.solution();
		NewPieces pieces = pieces();
		assertFalse(engine.pieces().isEmpty());
		assertEquals(engine.pieces(), pieces.pieces());
		assertEquals(engine.meanLift(), pieces.meanLift());
		assertEquals(engine.residual(), pieces.residual(level.problem().gap(), level.problem().stiffness()));
	}

	@Test
	void onlyThoseOfTheLastRoundAreNew() {
		demo.shim(demo.felt(row, ". 1 2 0.5"), "2", "4", "8");
		demo.shim(demo.felt(row, ". . 1 ."), "0.5", "5", "7.5");
		Arc arc = Arc.between(ClockHour.ofHour(5), new ClockHour(15));
		assertEquals(List.of(new PartialShim(arc, Length.thou("0.5"))), pieces().pieces());
	}

	@Test
	void aPadJudgedLevelGetsNone() {
		demo.felt(row, ". . 1 .").setLevel(true);
		assertEquals(List.of(), pieces().pieces());
		assertEquals(Length.ZERO, pieces().meanLift());
	}

	@Test
	void impossiblePiecesAreLeftOut() {
		demo.shim(demo.felt(row, ". . 1 ."), "0.5", "4", "4");
		assertEquals(List.of(), pieces().pieces());
	}

	private NewPieces pieces() {
		return NewPieces.of(demo.solved().keys().get(0));
	}
}
