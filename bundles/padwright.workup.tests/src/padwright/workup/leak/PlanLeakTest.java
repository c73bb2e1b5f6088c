package padwright.workup.leak;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import org.junit.jupiter.api.Test;

import padwright.engine.leak.Air;
import padwright.engine.leak.InstrumentLeak;
import padwright.engine.leak.KeyLeak;
import padwright.engine.leak.LeakComparison;
import padwright.engine.leak.SeatedPad;
import padwright.engine.leak.Tester;
import padwright.engine.length.Length;
import padwright.engine.levelling.LevellingSolution;
import padwright.engine.rim.RimProfile;
import padwright.model.keysystem.Key;
import padwright.workup.DemoPlan;
import padwright.workup.solve.LevelAnswer;
import padwright.workup.solve.PlanSolution;

class PlanLeakTest {

	private static final Tester TESTER = new Tester(1000, Air.at(20));

	private final DemoPlan demo = new DemoPlan();

	@Test
	void beforeIsTheProfileThatWasFeltOverTheMiddleOfTheRim() {
		demo.felt(demo.row(demo.key("F")), ". 1 2 0.5");
		PlanSolution solution = demo.solved();
		SeatedPad pad = new SeatedPad("F", Length.millimetres("7"), Length.millimetres("1"),
				level(solution).rim().profile());
		assertEquals(InstrumentLeak.of(List.of(pad), TESTER), PlanLeak.of(solution, TESTER).comparison().before());
	}

	@Test
	void afterIsTheResidualAtRestOnItsHighestSpot() {
		demo.felt(demo.row(demo.key("F")), ". 1 2 0.5");
		PlanSolution solution = demo.solved();
		LevellingSolution solved = level(solution).solution();
		long least = solved.residual().stream().min().getAsLong();
		RimProfile resting = RimProfile
				.ofNanometres(solved.residual().stream().map(open -> open - least).toArray());
		SeatedPad pad = new SeatedPad("F", Length.millimetres("7"), Length.millimetres("1"), resting);
		LeakComparison comparison = PlanLeak.of(solution, TESTER).comparison();
		assertEquals(InstrumentLeak.of(List.of(pad), TESTER), comparison.after());
		assertTrue(comparison.after().millilitresPerMinute() < comparison.before().millilitresPerMinute());
	}

	@Test
	void aKeyThatGetsNothingLeaksAsBefore() {
		demo.felt(demo.row(demo.key("F")), ". . 0.5 .").setLevel(true);
		LeakComparison.Row row = PlanLeak.of(demo.solved(), TESTER).comparison().rows().get(0);
		assertTrue(row.before().millilitresPerMinute() > 0);
		assertEquals(row.before(), row.after());
	}

	@Test
	void theWorstComesFirst() {
		demo.felt(demo.row(demo.key("F")), ". . 0.5 .");
		demo.felt(demo.row(demo.key("E")), ". . 2 .");
		assertEquals(List.of("E", "F"), PlanLeak.of(demo.solved(), TESTER).comparison().before().ranked().stream()
				.map(KeyLeak::key).toList());
	}

	@Test
	void aRimWithoutAWidthIsTakenToBeUsual() {
		Key key = demo.key("F");
		key.getHole().setRimWidth(null);
		demo.felt(demo.row(key), ". . 1 .");
		FeltPads felt = FeltPads.of(demo.service());
		assertEquals(List.of("F"), felt.assumedWidths());
		assertEquals(KeyRim.USUAL_WIDTH, felt.pads().get(0).rimWidth());
	}

	@Test
	void keysThatCannotBeToldAreNamed() {
		Key holeless = demo.key("E");
		holeless.setHole(null);
		demo.felt(demo.row(holeless), ". . 1 .");
		demo.row(demo.key("F"));
		demo.felt(demo.row(demo.key("G")), ". . 1");
		FeltPads felt = FeltPads.of(demo.service());
		assertEquals(List.of(), felt.pads());
		assertEquals(List.of("E", "F", "G"), felt.leftOut().stream().map(LeftOut::key).toList());
		assertEquals("3 readings for 4 hours", felt.leftOut().get(2).why());
	}

	@Test
	void withoutFilmThereIsABeforeAndNoChange() {
		demo.plan.getFitting().setFilms(null);
		demo.felt(demo.row(demo.key("F")), ". . 1 .");
		LeakComparison.Row row = PlanLeak.of(demo.solved(), TESTER).comparison().rows().get(0);
		assertEquals(row.before(), row.after());
	}

	@Test
	void theLaterOfTwoRowsForOneKeyCounts() {
		Key key = demo.key("F");
		demo.felt(demo.row(key), ". . 1 .");
		demo.felt(demo.row(key), ". . . .");
		assertEquals(0, PlanLeak.of(demo.solved(), TESTER).comparison().before().millilitresPerMinute());
	}

	private static LevelAnswer level(PlanSolution solution) {
		return solution.keys().get(0).level().orElseThrow();
	}
}
