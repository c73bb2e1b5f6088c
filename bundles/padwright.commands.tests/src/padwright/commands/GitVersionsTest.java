package padwright.commands;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Two versions as git gives them to a diff driver: seven arguments, nine for a file that was renamed. */
class GitVersionsTest {

	private static final String MODE = "100644";
	private static final String SOME_NAME = "0123456789012345678901234567890123456789";
	private static final String PLAN = "plan X for BoehmC with Bench {\n\tfit Rigid on Disc20 with Clear\n"
			+ "\tread at 12 3 6 9\n\tkey Fs empty 15 15 15 15\n\tkey F found worn\n}\n";

	@TempDir
	private Path folder;
	private Path plan;

	@BeforeEach
	void copyTheShop() throws IOException {
		ExampleShop shop = ExampleShop.copiedTo(folder);
		plan = shop.folder().resolve("plans/x.plan");
	}

	private CommandRun compare(byte[] old, byte[] current, String... behind) throws IOException {
		Path before = Files.write(folder.resolve("before"), old);
		Path after = Files.write(folder.resolve("after"), current);
		List<Object> seven = List.of("compare", "--git", plan, before, SOME_NAME, MODE, after, SOME_NAME, MODE);
		CommandRun run = CommandRun.padwright(Stream.concat(seven.stream(), Stream.of(behind)).toArray());
		assertEquals(ExitStatus.CLEAN, run.status(), run.err());
		return run;
	}

	private String compare(String old, String current, String... behind) throws IOException {
		return compare(old.getBytes(StandardCharsets.UTF_8), current.getBytes(StandardCharsets.UTF_8), behind).out()
				.replace("\r", "");
	}

	@Test
	void tradeWordsComeFirstAndThenTheLines() throws IOException {
		String out = compare(PLAN, PLAN.replace("found worn", "found torn"));
		assertTrue(out.replaceAll(" {2,}", "|").endsWith("F|found|worn|torn\nUnchanged: F♯\n"
				+ "Lines of the text, - as it was, + as it is:\n-\tkey F found worn\n+\tkey F found torn\n"), out);
	}

	@Test
	void whatNoTradeWordTellsIsSeenAllTheSame() throws IOException {
		String out = compare(PLAN, PLAN.replace("15 15 15 15", "15 15 15 15 remark \"soft\""));
		assertTrue(out.contains("Unchanged: F♯, F\n"), out);
		assertTrue(out.endsWith("-\tkey Fs empty 15 15 15 15\n+\tkey Fs empty 15 15 15 15 remark \"soft\"\n"), out);
	}

	@Test
	void whatIsNoPlanIsSeenByLines() throws IOException {
		String out = compare(PLAN, "plan X {\n}\n");
		assertTrue(out.contains("cannot be compared as a plan: "), out);
		assertTrue(out.contains("Lines of the text, - as it was, + as it is:\n-plan X for BoehmC with Bench {\n"), out);
	}

	@Test
	void whatIsNoTextIsPassedOn() throws IOException {
		CommandRun run = compare(PLAN.getBytes(StandardCharsets.UTF_8),
				"plan Größe".getBytes(StandardCharsets.ISO_8859_1));
		assertTrue(run.out().contains("see git diff --no-ext-diff"), run.out());
	}

	@Test
	void aRenamedPlanIsToldByBothNames() throws IOException {
		String out = compare(PLAN, PLAN, plan.resolveSibling("y.plan").toString(), "similarity index 100%");
		String names = plan + " renamed to " + plan.resolveSibling("y.plan");
		assertTrue(out.startsWith("padwright compare " + names + "\n"), out);
		assertTrue(out.endsWith("Unchanged: F♯, F\n"), out);
	}

	@Test
	void otherEndsOfLinesAreTold() throws IOException {
		assertTrue(compare(PLAN, PLAN.replace("\n", "\r\n")).endsWith("only the ends of lines differ\n"));
	}

	@Test
	void aNewPlanAndOneTakenAwayAreTold() throws IOException {
		Path before = Files.writeString(folder.resolve("before"), PLAN);
		Path nothing = folder.resolve("nothing");
		assertTrue(CommandRun.padwright("compare", "--git", plan, nothing, ".", ".", before, SOME_NAME, MODE).out()
				.endsWith("new" + System.lineSeparator()));
		assertTrue(CommandRun.padwright("compare", "--git", plan, before, SOME_NAME, MODE, nothing, ".", ".").out()
				.endsWith("taken away" + System.lineSeparator()));
	}
}
