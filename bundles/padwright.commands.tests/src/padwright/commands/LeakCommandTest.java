package padwright.commands;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import com.google.gson.JsonObject;

import padwright.engine.leak.Air;
import padwright.engine.leak.KeyLeak;
import padwright.engine.leak.LeakComparison;
import padwright.engine.leak.Tester;
import padwright.workup.leak.PlanLeak;
import padwright.workup.solve.PlanSolver;
import padwright.workup.solve.WrittenAnswers;

class LeakCommandTest {

	private static final String BODY = """
			fit Felt with Clear
			read at 12 3 6 9
			key Fs felt . 0.5 1 .
			key F felt . . 2 1
			key E felt . . 1 .
			key Ds
			""";

	@TempDir
	private Path folder;
	private Path plan;

	@BeforeEach
	void shop() {
		plan = DemoShop.in(folder).plan("Spring", BODY);
	}

	@Test
	void programsGetWhatTheEngineSays() {
		JsonObject json = CommandRun.padwright("leak", plan, "--json", "--pressure", "2000", "--temperature", "40")
				.json();
		LeakComparison engine = engine(new Tester(2000, Air.at(40)));
		assertEquals(2000, json.get("pressure").getAsDouble());
		assertEquals(engine.before().all().expected(), flow(json, "before"));
		assertEquals(engine.after().all().expected(), flow(json, "after"));
		KeyLeak worst = engine.rows().get(0).before();
		JsonObject first = json.getAsJsonArray("keys").get(0).getAsJsonObject();
		assertEquals(worst.key(), first.get("key").getAsString());
		assertEquals(worst.flow().expected(), flow(first, "before"));
		assertEquals(worst.equivalentHole().nanometres(),
				Math.round(first.getAsJsonObject("before").get("hole").getAsDouble() * 1e6));
	}

	@Test
	void theTableRanksAndNamesWhatIsMissing() {
		CommandRun run = CommandRun.padwright("leak", plan);
		assertEquals(ExitStatus.CLEAN, run.status(), run.err());
		KeyLeak worst = engine(new Tester(1000, Air.at(20))).rows().get(0).before();
		assertEquals("F", worst.key());
		assertTrue(run.line("1 ").matches("1\\|F\\|[0-9.]+ \\([0-9.]+ to [0-9.]+\\)\\|.*"), run.out());
		double told = Double.parseDouble(run.line("1 ").split("[| ]")[2]);
		assertEquals(worst.flow().expected(), told, 0.06 * told);
		assertTrue(worst.flow().low() < told && told < worst.flow().high(), run.out());
		assertTrue(run.out().contains("No rim width in the key system: 1 mm assumed for E"), run.out());
		assertTrue(run.out().contains("D♯: left out, the key system says no hole"), run.out());
		assertTrue(run.out().contains("at 1000 Pa and 20 °C"), run.out());
	}

	@Test
	void aTesterThatCannotBeIsRefused() {
		assertRefused("--pressure", "0");
		assertRefused("--pressure", "NaN");
		assertRefused("--temperature", "99");
		assertRefused("--pressure", "hard");
	}

	private void assertRefused(String option, String value) {
		CommandRun run = CommandRun.padwright("leak", plan, option, value);
		assertEquals(ExitStatus.UNUSABLE, run.status());
		assertEquals("", run.out());
		assertTrue(run.err().contains(option), run.err());
	}

	private LeakComparison engine(Tester tester) {
		return PlanLeak.of(PlanSolver.solve(LoadedShop.around(plan).plan(), WrittenAnswers.KEEP,
				job -> { }), tester).comparison();
	}

	private static double flow(JsonObject json, String side) {
		return json.getAsJsonObject(side).get("millilitresPerMinute").getAsDouble();
	}
}
