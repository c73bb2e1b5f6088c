package padwright.workbench.reports;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;

import padwright.commands.PadwrightApplication;

/**
 * What a command of the command line answers.
 *
 * @param command its name
 * @param subject the file or folder it was asked about
 * @param text results and messages, as they would stand in a terminal
 */
record Report(String command, Path subject, String text) {

	/** Carries the command out. It reads what is saved. */
	static Report of(String command, Path subject) {
		ByteArrayOutputStream results = new ByteArrayOutputStream();
		PrintStream out = new PrintStream(results, true, StandardCharsets.UTF_8);
		PadwrightApplication.run(List.of(command, subject.toString()), out, out);
		return new Report(command, subject, results.toString(StandardCharsets.UTF_8));
	}
}
