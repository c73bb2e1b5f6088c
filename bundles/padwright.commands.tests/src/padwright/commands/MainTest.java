package padwright.commands;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import picocli.CommandLine;
import picocli.CommandLine.Command;

class MainTest {

	@Command
	static final class FailingCommand implements Runnable {

		@Override
		public void run() {
			throw new IllegalStateException("out of shellac");
		}
	}

	@Command
	static final class BrokenCommand implements Runnable {

		@Override
		public void run() {
			throw new StackOverflowError();
		}
	}

	private final ByteArrayOutputStream out = new ByteArrayOutputStream();
	private final ByteArrayOutputStream err = new ByteArrayOutputStream();

	@Test
	void versionGoesToTheResults() {
		assertEquals(ExitStatus.CLEAN, run("--version"));
		assertTrue(text(out).startsWith("padwright 0.1.0"), text(out));
		assertEquals("", text(err));
	}

	@Test
	void unknownOptionIsUnusableInput() {
		assertEquals(ExitStatus.UNUSABLE, run("--no-such-option"));
		assertEquals("", text(out));
		assertTrue(text(err).contains("--no-such-option"), text(err));
		assertFalse(text(err).contains("\tat "), text(err));
	}

	@Test
	void failureIsOneLineWithItsReason() {
		assertEquals(ExitStatus.FAULT, execute(new FailingCommand()));
		assertEquals(1, text(err).lines().count(), text(err));
		assertTrue(text(err).contains("out of shellac"), text(err));
	}

	/** It must not look like a file that cannot be used, and somebody must be able to find it. */
	@Test
	void aFaultOfTheProgramLeavesARecordToSend() throws Exception {
		execute(new FailingCommand());
		Matcher named = Pattern.compile("Please send (\\S+) to").matcher(text(err));
		assertTrue(named.find(), text(err));
		Path log = Path.of(named.group(1));
		String record = Files.readString(log);
		assertTrue(record.contains("out of shellac") && record.contains("FailingCommand"), record);
		Files.delete(log);
	}

	@Test
	void whatTheDiskRefusesIsNoFaultOfTheProgram() {
		assertEquals(ExitStatus.UNUSABLE, CommandLineTool.fail(new IOException("no room"), new PrintWriter(err)));
		assertEquals(ExitStatus.UNUSABLE,
				CommandLineTool.fail(new InputException("no plan"), new PrintWriter(err)));
	}

	@Test
	void evenAnErrorIsOneLine() {
		assertEquals(ExitStatus.FAULT, execute(new BrokenCommand()));
		assertEquals(1, text(err).lines().count(), text(err));
	}

	/** Scripts read what it prints. */
	@Test
	void programSpeaksEnglishOnAGermanMachine(@TempDir Path folder) throws Exception {
		Path plan = Files.writeString(folder.resolve("work.plan"), "plan Work for Mini { }");
		Locale before = Locale.getDefault(Locale.Category.DISPLAY);
		PrintStream results = System.out;
		try {
			Locale.setDefault(Locale.Category.DISPLAY, Locale.GERMAN);
			System.setOut(stream(out));
			assertEquals(ExitStatus.FINDINGS, Main.inEnglish("check", plan.toString()));
		} finally {
			System.setOut(results);
			Locale.setDefault(Locale.Category.DISPLAY, before);
		}
		assertTrue(text(out).contains("There is no key system called Mini"), text(out));
	}

	@Test
	void commandWithinAnotherProgramSpeaksItsLanguage(@TempDir Path folder) throws Exception {
		Path plan = Files.writeString(folder.resolve("work.plan"), "plan Work for Mini { }");
		Locale before = Locale.getDefault(Locale.Category.DISPLAY);
		try {
			Locale.setDefault(Locale.Category.DISPLAY, Locale.GERMAN);
			assertEquals(ExitStatus.FINDINGS, run("check", plan.toString()));
		} finally {
			Locale.setDefault(Locale.Category.DISPLAY, before);
		}
		assertTrue(text(out).contains("Klappensystem Mini gibt es nicht"), text(out));
	}

	private int run(String... arguments) {
		return Main.run(List.of(arguments), stream(out), stream(err));
	}

	private int execute(Runnable command) {
		return Main.run(() -> new CommandLine(command), new String[0], stream(out), stream(err));
	}

	private static PrintStream stream(ByteArrayOutputStream bytes) {
		return new PrintStream(bytes, true, StandardCharsets.UTF_8);
	}

	private static String text(ByteArrayOutputStream bytes) {
		return bytes.toString(StandardCharsets.UTF_8);
	}
}
