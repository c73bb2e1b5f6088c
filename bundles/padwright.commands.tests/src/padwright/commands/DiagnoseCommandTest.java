package padwright.commands;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import com.google.gson.JsonObject;

import padwright.engine.diagnosis.SuspectSet;
import padwright.workup.diagnosis.PlanDiagnosis;

class DiagnoseCommandTest {

	@TempDir
	private Path folder;
	private Path plan;

	@BeforeEach
	void shop() {
		plan = DemoShop.in(folder).plan("Spring",
				"fit Felt with Clear read at 12 3 6 9 key E felt . . . . key Fs felt . . 2 .");
	}

	@Test
	void theTableRanksSuspectsAndNamesTheNextNote() {
		CommandRun run = CommandRun.padwright("diagnose", plan, "--bad", "E4", "--good", "G4");
		assertEquals(ExitStatus.CLEAN, run.status(), run.err());
		assertEquals("Spring: bad E4; good G4", run.line("Spring"));
		List<SuspectSet> suspects = suspects(List.of("E4"), List.of("G4"));
		assertEquals("[Fs]", suspects.get(0).pads().toString());
		assertEquals("F♯|" + Amounts.percent(suspects.get(0).share()), run.line("F♯"));
		assertTrue(run.line("Try ").startsWith("Try F♯4/side next"), run.out());
	}

	@Test
	void programsGetWhatTheEngineSays() {
		JsonObject json = CommandRun.padwright("diagnose", plan, "--json", "--bad", "E4,Gb4/side", "--good", "G4")
				.json();
		List<SuspectSet> suspects = suspects(List.of("E4", "F♯4/2"), List.of("G4"));
		assertEquals("[\"E4\",\"F♯4/side\"]", json.getAsJsonArray("bad").toString());
		assertEquals(suspects.size(), json.getAsJsonArray("suspects").size());
		JsonObject first = json.getAsJsonArray("suspects").get(0).getAsJsonObject();
		assertEquals(suspects.get(0).share(), first.get("share").getAsDouble());
		assertEquals("[\"Fs\"]", first.getAsJsonArray("pads").toString());
	}

	@Test
	void reportsThatContradictAreExplained() {
		CommandRun run = CommandRun.padwright("diagnose", plan, "--bad", "F4", "--good", "E4,G4");
		assertEquals(ExitStatus.FINDINGS, run.status());
		assertEquals("F4 is bad, but good notes clear all that it closes: F + F♯ by E4. One report is wrong, or the "
				+ "fault is no leaking pad.", run.line("F4 is bad"));
	}

	@Test
	void notesThatCannotBeUsedAreNamed() {
		assertRefused("near are G4, F♯4, F4", "--bad", "Ab4");
		assertRefused("there is no note H4", "--bad", "H4");
		assertRefused("note E4 is reported twice", "--bad", "E4", "--good", "Fb4");
		assertRefused("--bad names no note", "--bad", ",");
		assertRefused("--bad", "--good", "E4");
	}

	@Test
	void aCircleOfCouplingsIsAFindingAndItGoesOn() {
		CommandRun.write(folder, "round.keys", "system Round based on Duo { change Fs closes F }");
		Path round = CommandRun.write(folder, "Round.plan", "plan Round for Round { }");
		CommandRun run = CommandRun.padwright("diagnose", round, "--bad", "E4");
		assertEquals(ExitStatus.FINDINGS, run.status());
		assertTrue(run.err().contains("coupling-cycle"), run.err());
		assertTrue(run.line("F").startsWith("F"), run.out());
	}

	@Test
	void theExampleIsDiagnosed() {
		CommandRun run = CommandRun.padwright("diagnose", CommandRun.EXAMPLES.resolve("plans/spring-service.plan"),
				"--bad", "D4,E4", "--good", "G4");
		assertEquals(ExitStatus.CLEAN, run.status(), run.err());
		assertTrue(run.line("E ").startsWith("E|"), run.out());
	}

	private void assertRefused(String message, Object... notes) {
		Object[] arguments = new Object[notes.length + 2];
		arguments[0] = "diagnose";
		arguments[1] = plan;
		System.arraycopy(notes, 0, arguments, 2, notes.length);
		CommandRun run = CommandRun.padwright(arguments);
		assertEquals(ExitStatus.UNUSABLE, run.status(), run.out());
		assertEquals("", run.out());
		assertTrue(run.err().contains(message), run.err());
	}

	private List<SuspectSet> suspects(List<String> bad, List<String> good) {
		return PlanDiagnosis.of(LoadedShop.around(plan).plan(), bad, good).diagnosis().suspects();
	}
}
