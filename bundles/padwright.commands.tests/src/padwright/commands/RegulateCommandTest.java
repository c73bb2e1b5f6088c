package padwright.commands;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import com.google.gson.JsonObject;

class RegulateCommandTest {

	private static final String BODY = """
			fit Felt with Clear
			read at 12 3 6 9
			key Fs felt . . . . shim 1 from 3 to 9
			regulate F > Fs : 5 thou light at driven
			regulate E > Fs : 1.5 thou light at driver
			""";

	@TempDir
	private Path folder;
	private Path plan;

	@BeforeEach
	void shop() {
		plan = DemoShop.in(folder).plan("Spring", BODY);
	}

	@Test
	void theTableTellsTheCureAndTheUpset() {
		CommandRun run = CommandRun.padwright("regulate", plan);
		assertEquals(ExitStatus.CLEAN, run.status(), run.err());
		assertEquals("", run.err());
		assertEquals("F > F♯|screw, pitch 0.25 mm|5 light at driven|+5|+0.51|183° in (6.1 clock hours)",
				run.line("F > F♯"));
		assertEquals("E > F♯|cork|1.5 light at driver|−1.5|take away 1 + 0.5 thou of film",
				run.line("E > F♯"));
		String sooner = run.line("F♯").split("\\|")[2];
		assertTrue(sooner.matches("\\+(0\\.[3-9]|1)"), run.out());
		assertEquals("F♯|0|" + sooner + "|" + sooner, run.line("F♯"));
		assertEquals("F|F|" + sooner.substring(1), run.line("F  "));
		assertEquals("E|E|" + sooner.substring(1), run.line("E  "));
	}

	@Test
	void programsGetTheSame() {
		JsonObject json = CommandRun.padwright("regulate", "--json", plan).json();
		JsonObject first = json.getAsJsonArray("steps").get(0).getAsJsonObject();
		assertEquals("Spring", json.get("plan").getAsString());
		assertEquals("F", first.get("driver").getAsString());
		assertEquals(5, first.get("travel").getAsDouble());
		assertEquals(0.508, first.get("turns").getAsDouble());
		JsonObject second = json.getAsJsonArray("steps").get(1).getAsJsonObject();
		assertEquals("[1,0.5]", second.get("films").toString());
		JsonObject change = json.getAsJsonArray("changes").get(0).getAsJsonObject();
		assertEquals(0, change.get("byStack").getAsDouble());
		assertEquals("{\"driver\":\"F\",\"lightAt\":\"F\",\"light\":" + change.get("byFilm").getAsString() + "}",
				json.getAsJsonArray("upsets").get(0).toString());
	}

	@Test
	void aCircleIsAFindingThatNamesItsKeys() {
		CommandRun.write(folder, "round.keys", "system Round based on Duo { change Fs closes F }");
		Path round = CommandRun.write(folder, "Round.plan", "plan Round for Round { }");
		CommandRun run = CommandRun.padwright("regulate", round);
		assertEquals(ExitStatus.FINDINGS, run.status());
		assertEquals("", run.out());
		assertTrue(run.err().contains("Fs > F > Fs"), run.err());
		assertFalse(run.err().contains("\tat "), run.err());
		assertEquals("[\"Fs\",\"F\"]",
				CommandRun.padwright("regulate", round, "--json").json().getAsJsonArray("circle").toString());
	}

	@Test
	void errorsInThePlanAreListedAndItGoesOn() {
		Path wrong = DemoShop.in(folder).plan("Wrong", "regulate F > E : 1 thou light at driven");
		CommandRun run = CommandRun.padwright("regulate", wrong);
		assertEquals(ExitStatus.FINDINGS, run.status());
		assertTrue(run.err().contains("not-coupled"), run.err());
		assertTrue(run.line("F > F♯").endsWith("feel both pads"), run.out());
	}

	@Test
	void anUnusableFileIsNamed() {
		CommandRun run = CommandRun.padwright("regulate", folder.resolve("none.plan"));
		assertEquals(ExitStatus.UNUSABLE, run.status());
		assertTrue(run.err().contains("none.plan does not exist"), run.err());
		assertEquals(ExitStatus.UNUSABLE, CommandRun.padwright("regulate", plan, "--seconds", "0").status());
	}
}
