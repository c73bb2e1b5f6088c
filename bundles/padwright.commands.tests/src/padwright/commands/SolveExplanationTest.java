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

import padwright.engine.clock.ClockHour;
import padwright.engine.seating.SeatAnswer;
import padwright.workup.solve.PlanSolver;
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
		assertTrue(key.keySet().containsAll(List.of("key", "pieces", "takeOut", "stackChange", "chanceNow", "chance", "gap",
				"gapAfter", "heldOff", "limit", "feelAgain", "unread", "proven", "stiffness", "films", "height")));
		for (String gap : List.of("gap", "gapAfter")) {
			assertEquals(24, key.getAsJsonArray(gap).size());
			assertEquals(Set.of("low", "mid", "high"), key.getAsJsonArray(gap).get(0).getAsJsonObject().keySet());
		}
		assertEquals(Set.of("from", "hours", "thou"),
				key.getAsJsonArray("pieces").get(0).getAsJsonObject().keySet());
		assertEquals(Set.of("target", "pieces", "error", "tolerance", "likelyTolerance", "measured"),
				key.getAsJsonObject("height").keySet());
	}

	@Test
	void chancesAndGapsAreTheEnginesAndNoFinerThanTheirEvidence() {
		Path plan = plan();
		JsonObject key = key(CommandRun.padwright("solve", plan, "--json").json(), 0);
		SeatAnswer seat = PlanSolver.solve(LoadedShop.around(plan).plan(), WrittenAnswers.KEEP, job -> {
		}).keys().get(0).level().orElseThrow().seat();
		assertEquals(seat.chance(), key.get("chance").getAsDouble(), 0.005);
		assertEquals(2, key.get("chance").getAsBigDecimal().scale());
		assertEquals(seat.heldOff(), key.get("heldOff").getAsBoolean());
		assertEquals(Json.thou(seat.fullShims()), key.get("stackChange").getAsBigDecimal());
		assertEquals(seat.place().size(), key.getAsJsonArray("pieces").size());
		JsonObject three = key.getAsJsonArray("gap").get(6).getAsJsonObject();
		assertEquals(seat.gapNow().high().at(ClockHour.ofHour(3)).inThou(), three.get("high").getAsDouble(), 0.051);
		assertTrue(three.get("high").getAsBigDecimal().scale() <= 1, three.toString());
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
		assertTrue(run.out().contains("F♯: Level now: "), run.out());
		assertTrue(run.out().contains("F♯: Level after this: "), run.out());
		assertTrue(run.out().contains("F♯: What limits the chance: "), run.out());
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
