package padwright.commands;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ExchangeCommandsTest {

	@TempDir
	private Path folder;
	private DemoShop shop;

	@BeforeEach
	void shop() {
		shop = DemoShop.in(folder);
	}

	@ParameterizedTest
	@ValueSource(strings = { "json", "csv", "xmi" })
	void aDocumentGoesOutAndComesBack(String format) throws IOException {
		Path plan = shop.plan("Spring", "fit Felt read at 12 3 6 9\n// remark\nkey F empty 15 15 15 15 felt . 0.5 . .");
		Path out = folder.resolve("out." + format);
		assertEquals(ExitStatus.CLEAN, CommandRun.padwright("export", plan, "-o", out).status());
		Path back = folder.resolve("back").resolve("Spring.plan");
		Files.createDirectories(back.getParent());
		CommandRun run = CommandRun.padwright("import", out, "-o", back);
		assertEquals(ExitStatus.CLEAN, run.status(), run.err());
		assertEquals("""
				plan Spring for Duo serial "X-1" with Bench {
					fit Felt
					read at 12 3 6 9
					key F empty 15 15 15 15 felt . 0.5 . .
				}
				""", Files.readString(back));
		assertEquals(CommandRun.padwright("export", plan, "--to", format).out(), Files.readString(out));
	}

	@Test
	void theSchemaIsPrinted() {
		assertEquals("urn:padwright:exchange:2",
				CommandRun.padwright("export", "--schema").json().get("$id").getAsString());
	}

	@Test
	void aFileThatIsThereIsReplacedOnlyWhenToldSo() throws IOException {
		Path plan = shop.plan("Spring", "fit Felt");
		Path json = folder.resolve("Spring.json");
		CommandRun.padwright("export", plan, "-o", json);
		byte[] old = Files.readAllBytes(plan);
		assertRefused("is there already", "import", json, "-o", plan);
		assertArrayEquals(old, Files.readAllBytes(plan));
		assertEquals(ExitStatus.CLEAN, CommandRun.padwright("import", json, "-o", plan, "--replace").status());
		assertArrayEquals(old, Files.readAllBytes(folder.resolve("Spring.plan.bak")));
	}

	@Test
	void whatIsNotTakenOverLeavesNothing() throws IOException {
		Path json = CommandRun.write(folder, "bad.json", "{\"format\": \"padwright/2\",\n\"plan\": []}");
		assertRefused("bad.json:2 was not taken over: Document has no \"plan\"; did you mean \"plans\"", "import", json,
				"-o", folder.resolve("bad.plan"));
		assertRefused("is none of .json, .csv, .xmi", "import", shop.plan("P", ""));
		assertRefused("does not exist", "import", folder.resolve("none.json"));
		assertRefused("is not UTF-8", "import", Files.write(folder.resolve("latin.csv"), new byte[] { 'a', (byte) 0xE4 }));
		assertRefused("name a .keys", "export");
		assertRefused("name one file", "export", folder);
		assertFalse(Files.exists(folder.resolve("bad.plan")));
	}

	@Test
	void textThatCannotBeReadIsNotExported() {
		CommandRun run = CommandRun.padwright("export", shop.plan("Broken", "key F empty empty"));
		assertEquals(ExitStatus.FINDINGS, run.status());
		assertEquals("", run.out());
		assertTrue(run.err().contains("syntax"), run.err());
	}

	@Test
	void readingsGoIntoTheRowsOfAPlan() throws IOException {
		Path plan = shop.plan("Spring", "read at 12 3 6 9\n\tkey F found torn felt . . . . // as found\n\tkey E");
		Path readings = CommandRun.write(folder, "readings.csv",
				"key;9 mm;12 mm;3 mm;6 mm\nF;0,381;0,381;0,3937;0,3683\nF#;0,4;0,4;0,4;0,4\ne;0,381;0,381;0,381;0,381\n");
		CommandRun run = CommandRun.padwright("import", readings, "--into", plan);
		assertEquals(ExitStatus.CLEAN, run.status(), run.err());
		assertEquals("""
				plan Spring for Duo serial "X-1" with Bench {
				read at 12 3 6 9
					key F found torn empty 15 15.5 14.5 15 felt . . . . // as found
					key E empty 15 15 15 15
					key Fs empty 0.4 0.4 0.4 0.4 mm
				}
				""", Files.readString(plan));
		assertTrue(CommandRun.padwright("import", readings, "--into", plan).out().contains("already"));
	}

	@Test
	void aPlanWithoutRowsGetsThem() throws IOException {
		Path readings = CommandRun.write(folder, "readings.csv", "key,12,6\nF,15,15\nE,14.5,15\n");
		Path bare = shop.plan("Bare", "\tread at 12 6");
		Path regulated = shop.plan("Regulated", "\tread at 12 6\n\tregulate F > Fs : 0.5 thou light at driven");
		for (Path plan : List.of(bare, regulated)) {
			assertEquals(ExitStatus.CLEAN, CommandRun.padwright("import", readings, "--into", plan, "--unit", "thou").status());
			assertTrue(Files.readString(plan).contains("\n\tkey F empty 15 15\n\tkey E empty 14.5 15\n"),
					Files.readString(plan));
		}
	}

	@Test
	void gapsThatAreThereGiveWayOnlyWhenToldSo() throws IOException {
		Path plan = shop.plan("Spring", "read at 12 6\nkey F empty 15 15");
		Path readings = CommandRun.write(folder, "readings.csv", "key,12 thou,6 thou\nF,14,14\n");
		assertRefused("readings.csv:2 was not taken over: the plan holds gaps of F already, in line 3", "import", readings,
				"--into", plan);
		assertEquals(ExitStatus.CLEAN, CommandRun.padwright("import", readings, "--into", plan, "--replace").status());
		assertTrue(Files.readString(plan).contains("key F empty 14 14\n"));
	}

	@Test
	void readingsThatDoNotGoIntoThePlanAreRefused() throws IOException {
		Path plan = shop.plan("Spring", "read at 12 6\nkey F");
		assertReadingsRefused("readings.csv:2 was not taken over: the system has no key \"X\"",
				"key,12 mm,6 mm\nX,1,1", plan);
		assertReadingsRefused("F has no reading at 6; the plan reads at 12 6", "key,12 mm\nF,1", plan);
		assertReadingsRefused("F is read at 3, where", "key,12 mm,3 mm,6 mm\nF,1,1,1", plan);
		assertReadingsRefused("under two names", "key,12 mm,6 mm\nFs,1,1\nF♯,1,1", plan);
		assertReadingsRefused("write read at", "key,12 mm\nF,1", shop.plan("NoHours", "key F"));
		assertRefused("'inch' is not one of thou, mm, um", "import", plan, "--into", plan, "--unit", "inch");
		assertRefused("leave --output out", "import", plan, "--into", plan, "-o", plan);
	}

	private void assertReadingsRefused(String why, String readings, Path plan) throws IOException {
		String old = Files.readString(plan);
		assertRefused(why, "import", CommandRun.write(folder, "readings.csv", readings), "--into", plan);
		assertEquals(old, Files.readString(plan));
	}

	private static void assertRefused(String why, Object... arguments) {
		CommandRun run = CommandRun.padwright(arguments);
		assertEquals(ExitStatus.UNUSABLE, run.status(), run.out());
		assertTrue(run.err().contains(why), run.err());
		assertFalse(run.showsItsInside(), run.err());
	}
}
