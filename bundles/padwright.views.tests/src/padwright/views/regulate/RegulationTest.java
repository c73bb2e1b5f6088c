package padwright.views.regulate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import org.junit.jupiter.api.Test;

import padwright.engine.coupling.FilmChange;
import padwright.engine.coupling.ScrewTurn;
import padwright.engine.length.Length;
import padwright.views.Bench;
import padwright.workup.regulate.AdjustmentWords;
import padwright.workup.regulate.RegulationWork;
import padwright.workup.service.ServicePlan;

class RegulationTest {

	@Test
	void everyCouplingOfTheExamplesIsListedInTheOrderOfWork() {
		for (ServicePlan plan : Bench.examples()) {
			var solution = Bench.solve(plan);
			assertEquals(
					RegulationWork.of(solution).steps().stream().map(step -> step.coupling().toString()).toList(),
					RegulationState.of(solution).rows().stream().map(RegulationRow::id).toList());
		}
	}

	@Test
	void lightThatIsFoundTellsTheTurn() {
		Bench bench = new Bench("key A felt . . . .\nregulate A > B : 5 thou light at driven");
		RegulationRow row = RegulationState.of(Bench.solve(bench.plan())).rows().get(0);
		assertEquals("A > B", row.id());
		assertTrue(row.found().contains("5") && row.found().contains("B♭"), row.found());
		assertTrue(row.turn().contains("183°"), row.turn());
	}

	@Test
	void piecesUpsetTheCoupling() {
		Bench bench = new Bench("key B felt . 1 . 1 shim 2 from 2 to 8");
		RegulationState state = RegulationState.of(Bench.solve(bench.plan()));
		// Film under half the pad lets the driven key touch sooner: the driver is held up by as much.
		assertTrue(state.rows().get(0).upset().matches("about [0-9.]+ thou at A"), state.rows().get(0).upset());
		assertFalse(state.note().isEmpty());
	}

	@Test
	void turnsAreToldInDegrees() {
		Length pitch = Length.millimetres("0.25");
		assertTrue(words(pitch.times(11), 8).startsWith("1 turn and 135°"), words(pitch.times(11), 8));
		assertTrue(words(pitch, 20).startsWith("18° in (0.6"), words(pitch, 20));
		assertTrue(words(pitch, 1000).startsWith("< 1°"));
		assertEquals(AdjustmentWords.of(new FilmChange(Length.ZERO, List.of())), words(Length.ZERO, 1));
	}

	private static String words(Length travel, long parts) {
		return AdjustmentWords.of(new ScrewTurn(new Length(travel.nanometres() / parts), Length.millimetres("0.25")));
	}

	@Test
	void progressIsKeptAsText() {
		Progress progress = Progress.none().with("F > Fs", true).with("A > As", true).with("G > G2", true)
				.with("A > As", false);
		assertEquals("F > Fs\nG > G2\n", progress.toText());
		assertEquals(progress, Progress.of(progress.toText()));
		assertEquals(progress, Progress.of("\r\n F > Fs \r\nG > G2"));
		assertTrue(progress.isDone("G > G2"));
		assertFalse(progress.isDone("A > As"));
		assertEquals(Progress.none(), Progress.of(""));
	}
}
