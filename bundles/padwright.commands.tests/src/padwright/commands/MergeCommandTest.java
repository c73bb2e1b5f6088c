package padwright.commands;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class MergeCommandTest {

	private static final String BASE = "plan P for S {\n\tkey A empty 15 15\n\tkey B empty 15 15\n}\n";

	@TempDir
	private Path folder;

	private Path file(String name, String text) {
		return CommandRun.write(folder, name, text);
	}

	private CommandRun merge(String ours, String theirs) {
		return CommandRun.padwright("merge", file("base", BASE), file("ours", ours), file("theirs", theirs));
	}

	private String result() throws IOException {
		return Files.readString(folder.resolve("ours"));
	}

	@Test
	void theResultIsWrittenOverOurs() throws IOException {
		CommandRun run = merge(BASE.replace("A empty 15", "A empty 14"), BASE.replace("15\n}", "16\n}"));
		assertEquals(ExitStatus.CLEAN, run.status(), run.err());
		assertEquals(BASE.replace("A empty 15", "A empty 14").replace("15\n}", "16\n}"), result());
		assertEquals("", run.err() + run.out());
	}

	@Test
	void aConflictIsMarkedAndTold() throws IOException {
		CommandRun run = merge(BASE.replace("A empty 15", "A empty 14"), BASE.replace("A empty 15", "A empty 13"));
		assertEquals(ExitStatus.FINDINGS, run.status());
		assertTrue(result().contains("<<<<<<< ours\n\tkey A empty 14 15\n=======\n\tkey A empty 13 15\n>>>>>>> theirs\n"));
		assertTrue(run.err().contains("has a place that both copies changed differently"), run.err());
		CommandRun check = CommandRun.padwright("check", Files.move(folder.resolve("ours"), folder.resolve("o.plan")));
		assertTrue(check.out().contains("o.plan:2:1 error syntax Two edits go against each other here"), check.out());
	}

	@Test
	void textThatCannotBeReadIsMergedByLinesWithAWord() throws IOException {
		CommandRun run = merge(BASE.replace("key A empty 15", "kee A empty 15"), BASE.replace("B empty 15", "B empty 16"));
		assertEquals(ExitStatus.CLEAN, run.status());
		assertTrue(run.err().contains("merged by lines"), run.err());
		assertTrue(result().contains("kee A"), result());
	}

	@Test
	void whatIsMissingLeavesOursAsItWas() throws IOException {
		Path ours = file("ours", BASE);
		CommandRun run = CommandRun.padwright("merge", folder.resolve("base"), ours, ours);
		assertEquals(ExitStatus.UNUSABLE, run.status());
		assertEquals(BASE, result());
	}

	@Test
	void messagesCallTheDocumentByItsName() throws IOException {
		CommandRun run = CommandRun.padwright("merge", file("base", BASE),
				file("ours", BASE.replace("A empty 15", "A empty 14")),
				file("theirs", BASE.replace("A empty 15", "A empty 13")), "plans/p.plan");
		assertTrue(run.err().startsWith(Path.of("plans/p.plan") + " has a place that both copies"), run.err());
		Files.write(folder.resolve("theirs"), new byte[] { 'p', (byte) 0xFF });
		run = CommandRun.padwright("merge", folder.resolve("base"), folder.resolve("ours"), folder.resolve("theirs"),
				"plans/p.plan");
		assertTrue(run.err().contains(Path.of("plans/p.plan") + " of the other side is not UTF-8 text"), run.err());
	}
}
