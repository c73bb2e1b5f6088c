package padwright.commands;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import com.google.gson.JsonObject;
import com.google.gson.JsonParser;

class CompareCommandTest {

	private static final String HEAD = "fit Felt on Disc with Clear read at 12 3 6 9\n";
	private static final String FS =
			"key Fs found worn empty 15 15 15 15 stack 7.5 7.5 felt . 0.5 . . shim 0.5 from 2 to 4\n";
	private static final String F = "key F found sound empty 15 15 15 15 stack 5 7.5 3 felt . . . . shim none\n";

	@TempDir
	private Path folder;
	private DemoShop shop;

	@BeforeEach
	void openTheShop() {
		shop = DemoShop.in(folder);
	}

	private CommandRun compare(String old, String current, Object... options) {
		Object[] arguments = new Object[3 + options.length];
		arguments[0] = "compare";
		arguments[1] = shop.plan("Old", HEAD + old);
		arguments[2] = shop.plan("New", HEAD + current);
		System.arraycopy(options, 0, arguments, 3, options.length);
		CommandRun run = CommandRun.padwright(arguments);
		assertEquals(ExitStatus.CLEAN, run.status(), run.err());
		return run;
	}

	/** The line that begins so, its columns parted by one bar. */
	private static String line(CommandRun run, String start) {
		return run.out().lines().map(line -> line.replaceAll(" {2,}", "|")).filter(line -> line.startsWith(start))
				.findFirst().orElse("no line begins with " + start + " in:\n" + run.out());
	}

	@Test
	void systemsDifferInTheirPartsWithAllThatTheyInherit() {
		Path base = folder.resolve("duo.keys");
		Path wide = CommandRun.write(folder, "wide.keys", "system Wide based on Duo { change F closes nothing hole 13.5 mm "
				+ "remove Ds touch R3 remove note F4 note G4 : R4 R3 key Low by R3 cup 9 mm }");
		CommandRun run = CommandRun.padwright("compare", base, wide);
		assertEquals(ExitStatus.CLEAN, run.status(), run.err());
		assertEquals("part|what|Duo|Wide|difference", line(run, "part"));
		assertTrue(run.out().replaceAll(" {2,}", "|").contains("|hole|13 mm|13.5 mm|+0.5 mm"), run.out());
		assertTrue(run.out().replaceAll(" {2,}", "|").contains("|closes|Fs"), run.out());
		assertEquals("note G4|fingerings|R4|R4 R3", line(run, "note G4"));
		assertEquals("Only in Wide: touch R3, key Low", line(run, "Only in Wide"));
		assertTrue(line(run, "Only in Duo").endsWith("note F4"), run.out());
		JsonObject json = JsonParser.parseString(CommandRun.padwright("compare", "--json", base, wide).out())
				.getAsJsonObject();
		assertEquals("[\"touch R3\",\"key Low\"]", json.get("onlyNew").toString());
		assertTrue(json.get("unchanged").toString().contains("key Fs"));
	}

	@Test
	void aPlanDoesNotDifferFromItsCopy() {
		assertEquals("Unchanged: F♯, F\n", compare(FS + F, FS + F).out().replace("\r", ""));
	}

	@Test
	void theOrderOfFullShimsIsNoChange() {
		assertTrue(compare(F, F.replace("5 7.5 3", "7.5 3 5")).out().contains("Unchanged: F"));
	}

	@Test
	void everyReadingThatChangedIsAChange() {
		CommandRun run = compare(FS + F, FS + F.replace("felt . . . .", "felt . 0.5 . ."));
		assertEquals("F|felt at 3|drags|0.5", line(run, "F|felt"));
		assertFalse(run.out().contains("Unchanged: F♯, F"), run.out());
	}

	@Test
	void aCupThatLeansAsMuchTheOtherWayIsAChange() {
		CommandRun run = compare(F.replace("15 15 15 15", "15 16 15 14"), F.replace("15 15 15 15", "15 14 15 16"));
		assertEquals("F|empty cup|15 16 15 14, mean 15|15 14 15 16, mean 15", line(run, "F|empty"));
	}

	@Test
	void whatWasFeltAsDeliveredIsCompared() {
		String same = F.strip() + " delivered . . . .\n";
		assertEquals("Unchanged: F\n", compare(same, same).out().replace("\r", ""));
		CommandRun tilted = compare(same, F.strip() + " delivered . 1 . .\n");
		assertEquals("F|felt as delivered at 3|drags|1", line(tilted, "F|felt as delivered at 3"));
		assertTrue(line(tilted, "F|level as delivered").matches("F\\|level as delivered\\|.*\\d+ %.*\\|.*\\d+ %.*"),
				tilted.out());
	}

	@Test
	void whatChangedIsToldInATableWithByHowMuch() {
		String now = FS.replace("worn", "torn").replace("7.5 7.5", "7.5 5 2").replace("15 15 15 15", "15 15 15 16")
				.replace("0.5 from 2 to 4", "none");
		CommandRun run = compare(FS + F, now + F);
		assertEquals("key|what|Old|New|difference", run.line("key"));
		assertEquals("F♯|found|worn|torn", line(run, "F♯|found"));
		assertEquals("F♯|empty cup|15 15 15 15, mean 15|15 15 15 16, mean 15.25|0.25 thou wider", line(run, "F♯|empty"));
		assertEquals("F♯|full shims|7.5 + 7.5 = 15|7.5 + 5 + 2 = 14.5|0.5 thou less", line(run, "F♯|full"));
		assertEquals("F♯|pieces|0.5 from 2 to 4|none", line(run, "F♯|pieces"));
		assertTrue(run.out().contains("Unchanged: F"), run.out());
	}

	@Test
	void whatTheLaterServiceDoesNotSpeakOfIsNoChange() {
		assertTrue(compare(F, "key F felt . . . . shim none\n").out().contains("Unchanged: F"));
		assertEquals("F|found|sound|torn", line(compare(F, "key F found torn\n"), "F|found"));
	}

	@Test
	void nothingOfAPatchIsSeen() {
		assertTrue(compare(FS + F, F.replace("sound", "torn")).out().lines().noneMatch(line -> line.matches("[-+@].*")));
	}

	@Test
	void keysOfOnePlanAloneAreNamed() {
		JsonObject json = JsonParser.parseString(compare(FS, F, "--json").out()).getAsJsonObject();
		assertEquals("F♯", json.getAsJsonArray("onlyOld").get(0).getAsString());
		assertEquals("F", json.getAsJsonArray("onlyNew").get(0).getAsString());
		assertTrue(json.get("sameInstrument").getAsBoolean());
	}

	@Test
	void swappingThePlansSwapsThenAndNow() {
		JsonObject forward = changes(FS, FS.replace("7.5 7.5", "7.5 5"));
		JsonObject backward = changes(FS.replace("7.5 7.5", "7.5 5"), FS);
		assertEquals(forward.get("then"), backward.get("now"));
		assertEquals(forward.get("now"), backward.get("then"));
		assertEquals("2.5 thou less", forward.get("by").getAsString());
		assertEquals("2.5 thou more", backward.get("by").getAsString());
	}

	private JsonObject changes(String old, String current) {
		return JsonParser.parseString(compare(old, current, "--json").out()).getAsJsonObject().getAsJsonArray("changed")
				.get(0).getAsJsonObject().getAsJsonArray("changes").get(0).getAsJsonObject();
	}

	@Test
	void whatIsNoPlanIsUnusable() {
		CommandRun run = CommandRun.padwright("compare", shop.plan("Old", HEAD + F), folder.resolve("missing.plan"));
		assertEquals(ExitStatus.UNUSABLE, run.status());
	}
}
