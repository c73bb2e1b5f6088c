package padwright.commands;

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

/** Options of an estimate from what an inspection found. */
class EstimateDraftTest {

	private static final Path YEAR = Path.of("..", "..", "examples", "year");
	/** Four pads of six: 20 + 30 + 4/6 · 120 + 4/6 · 180 + 60 + 15 = 325 minutes at 60.00 an hour; for all 425. */
	private static final String DRAFT = """
			estimate on 2026-10-13 {
				option needed "what is needed" {
					item "woven felt pad" 3.50 times 4
					item "labour: new pads" 325.00
				}
				option all "all pads new" {
					item "woven felt pad" 3.50 times 6
					item "labour: new pads" 425.00
				}
			}
			""";

	@TempDir
	private Path folder;
	private Path plan;

	@BeforeEach
	void copyTheYear() throws IOException {
		for (String file : List.of("padwright.shop", "stock/bench.stock", "stock/logo.png", "systems/flutes.keys",
				"plans/10-october.plan")) {
			Files.copy(YEAR.resolve(file), folder.resolve(Path.of(file).getFileName()));
		}
		plan = folder.resolve("10-october.plan");
		String text = Files.readString(plan);
		int begin = text.indexOf("\t\testimate", text.indexOf("plan J050"));
		int end = text.indexOf("\n\t\t}\n", begin) + "\n\t\t}\n".length();
		Files.writeString(plan, text.substring(0, begin) + text.substring(end));
	}

	private void change(Path file, String was, String is) throws IOException {
		String text = Files.readString(file);
		assertTrue(text.contains(was), was);
		Files.writeString(file, text.replace(was, is));
	}

	@Test
	void padsThatWereNotFoundSoundAreOneOptionAndAllOfThemTheOther() {
		CommandRun run = CommandRun.padwright("estimate", plan + "#J050", "--draft", "--on", "2026-10-13");
		assertEquals(ExitStatus.CLEAN, run.status(), run.err());
		assertEquals(DRAFT, run.out());
	}

	@Test
	void itIsWrittenBehindTheDiaryAndDrawn() throws IOException {
		CommandRun run = CommandRun.padwright("estimate", plan + "#J050", "--draft", "--write", "--on", "2026-10-13");
		assertEquals(ExitStatus.CLEAN, run.status(), run.err());
		String text = Files.readString(plan);
		assertTrue(text.contains("\t\tstage look took 20 minutes on 2026-10-13 by \"K\"\n\t\testimate on 2026-10-13 {\n\t\t\toption needed"),
				text);
		assertEquals(ExitStatus.CLEAN, CommandRun.padwright("check", plan).status());
		Files.createDirectories(folder.resolve("out"));
		assertEquals(ExitStatus.CLEAN,
				CommandRun.padwright("estimate", plan + "#J050", "-o", folder.resolve("out")).status());
		String words = Files.readString(folder.resolve("out/J050-estimate-1.svg")).replaceAll("<[^>]*>", " ").replaceAll("\\s+", " ");
		assertTrue(words.contains("Option 1: what is needed") && words.contains("net 339.00 tax 19 % 64.41 total 403.41"), words);
		assertTrue(words.contains("Notes that need too much pressure: C4, D4."), words);
		CommandRun again = CommandRun.padwright("estimate", plan + "#J050", "--draft", "--write");
		assertEquals(ExitStatus.UNUSABLE, again.status());
		assertTrue(again.err().contains("has an estimate already"), again.err());
		assertEquals(text, Files.readString(plan));
	}

	@Test
	void aPlanWithoutADiaryGetsOne() throws IOException {
		Path bare = Files.writeString(folder.resolve("bare.plan"), "plan Bare for Flute with YearBench {\n\tfit Felt\n\tkey A found torn\n"
				+ "\tkey G found sound\n}\n");
		CommandRun run = CommandRun.padwright("estimate", bare, "--draft", "--write", "--on", "2026-10-13");
		assertEquals(ExitStatus.FINDINGS, run.status());
		assertTrue(run.err().contains("no price: labour"), run.err());
		assertTrue(Files.readString(bare).contains("\tjob {\n\t\testimate on 2026-10-13 {\n\t\t\toption needed \"what is needed\" {\n"
				+ "\t\t\t\titem \"woven felt pad\" 3.50\n"), Files.readString(bare));
		assertEquals(ExitStatus.CLEAN, CommandRun.padwright("check", bare).status());
	}

	@Test
	void whatHasNoPriceIsNamedAndInNoOption() throws IOException {
		change(plan, "\tfit Felt with Clear glue Shellac\n", "\tinspect { tenon foot loose by 1 thou }\n\tfit Felt with Clear glue Shellac\n");
		CommandRun run = CommandRun.padwright("estimate", plan + "#J050", "--draft", "--on", "2026-10-13");
		assertEquals(ExitStatus.FINDINGS, run.status());
		assertTrue(run.err().contains("in no option, since it has no price: ") && run.err().contains("tenon"), run.err());
		assertFalse(run.out().contains("tenon"));
	}

	@Test
	void aPlanInWhichNothingHasAPriceIsRefused() throws IOException {
		change(folder.resolve("bench.stock"), "\t\tprice 3.50\n", "");
		change(folder.resolve("bench.stock"), " rate 60.00", "");
		CommandRun run = CommandRun.padwright("estimate", plan + "#J050", "--draft");
		assertEquals(ExitStatus.UNUSABLE, run.status());
		assertTrue(run.err().contains("nothing in the plan has a price"), run.err());
	}

	@Test
	void writingGoesWithDraftingOnly() {
		CommandRun run = CommandRun.padwright("estimate", plan + "#J050", "--write");
		assertEquals(ExitStatus.UNUSABLE, run.status());
		assertTrue(run.err().contains("--write goes with --draft"), run.err());
	}
}
