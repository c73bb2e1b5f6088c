package padwright.commands;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Set;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import com.google.gson.JsonObject;

import padwright.engine.levelling.Budget;
import padwright.engine.rim.ProfileSplit;
import padwright.workup.solve.KeySolution;
import padwright.workup.solve.PlanSolver;
import padwright.workup.solve.WorstReading;
import padwright.workup.solve.WrittenAnswers;

class SolveExplanationTest {

	private static final String BODY = """
			fit Felt with Clear
			read at 12 3 6 9
			key Fs empty 15 15 15 15 felt . 1 2 0.5
			key F felt . 0.5 . . shim 0.5 from 1 to 7 felt . . . .
			key E felt at 12 1 2 3 4 5 6 7 8 9 10 11: 2 2 3 3 3 2 2 1.5 0.5 0.5 0.5 1 shim 3 from 2 to 3.5
				felt at 12 1 2 3 4 5 6 7 8 9 10 11: 2 2 1.5 1 2 3 2 1 0.5 0.5 0.5 1
			key Ds
			""";

	@TempDir
	private Path folder;

	@Test
	void fieldsThatProgramsRelyOnStay() {
		JsonObject json = CommandRun.padwright("solve", plan(), "--json").json();
		assertTrue(json.keySet().containsAll(List.of("plan", "tolerance", "keys")));
		JsonObject key = key(json, 0);
		assertTrue(key.keySet().containsAll(
				List.of("key", "profile", "stiffness", "films", "pieces", "before", "after", "proof", "height")));
		assertEquals(24, key.getAsJsonArray("profile").size());
		assertEquals(Set.of("from", "hours", "thou"),
				key.getAsJsonArray("pieces").get(0).getAsJsonObject().keySet());
		assertEquals(Set.of("target", "pieces", "error"), key.getAsJsonObject("height").keySet());
	}

	@Test
	void theSplitAndTheWorstReadingAreTheEngines() {
		Path plan = plan();
		JsonObject key = key(CommandRun.padwright("solve", plan, "--json").json(), 0);
		KeySolution solution = PlanSolver.solve(LoadedShop.around(plan).plan(), WrittenAnswers.KEEP,
				Budget.unlimited(), job -> { }).keys().get(0);
		ProfileSplit split = ProfileSplit.of(solution.level().orElseThrow().rim().profile());
		JsonObject told = key.getAsJsonObject("split");
		assertEquals(Json.thou(split.height()), told.get("height").getAsBigDecimal());
		assertEquals(Json.thou(split.tilt().fromTightToOpen()),
				told.getAsJsonObject("tilt").get("thou").getAsBigDecimal());
		assertEquals(split.tilt().openHours().toString(), told.getAsJsonObject("tilt").get("openAt").toString());
		assertEquals(2, told.getAsJsonObject("saddle").getAsJsonArray("openAt").size());
		assertEquals(Json.thou(split.filmOnly()), told.get("filmOnly").getAsBigDecimal());
		WorstReading worst = WorstReading.of(solution).orElseThrow();
		assertEquals(worst.hour().hour(), key.getAsJsonObject("worstAfter").get("hour").getAsBigDecimal());
		assertEquals(Json.thou(worst.gap()), key.getAsJsonObject("worstAfter").get("gap").getAsBigDecimal());
	}

	@Test
	void calibrationIsToldOrRefusedInWords() {
		CommandRun run = CommandRun.padwright("solve", plan(), "--json");
		JsonObject json = run.json();
		assertFalse(key(json, 0).has("calibration"));
		assertTrue(key(json, 1).getAsJsonObject("calibration").get("undecided").getAsString().contains("any stiffness"));
		JsonObject told = key(json, 2).getAsJsonObject("calibration");
		assertEquals(1, told.get("rounds").getAsInt());
		assertTrue(told.get("atLeast").getAsDouble() <= told.get("stiffness").getAsDouble());
		assertTrue(told.get("stiffness").getAsDouble() <= told.get("atMost").getAsDouble());
	}

	@Test
	void theTableExplainsEveryKey() {
		CommandRun run = CommandRun.padwright("solve", plan());
		assertEquals(ExitStatus.FINDINGS, run.status());
		assertTrue(run.out().contains("F♯: height "), run.out());
		assertTrue(run.out().contains("open toward"), run.out());
		assertTrue(run.out().contains("F♯: floating c"), run.out());
		assertTrue(run.out().contains("F♯: worst after: "), run.out());
		assertTrue(run.out().contains("F: no stiffness from its rounds: any stiffness"), run.out());
		assertTrue(run.out().contains("E: stiffness by 1 round: "), run.out());
		assertTrue(run.out().contains("D♯: not levelled: feel the pad"), run.out());
	}

	private Path plan() {
		return DemoShop.in(folder).plan("Spring", BODY);
	}

	private static JsonObject key(JsonObject json, int index) {
		return json.getAsJsonArray("keys").get(index).getAsJsonObject();
	}
}
