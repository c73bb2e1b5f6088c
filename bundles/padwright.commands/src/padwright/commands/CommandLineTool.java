package padwright.commands;

import java.io.PrintStream;
import java.io.PrintWriter;

import picocli.CommandLine;

/** Parses the arguments and runs the command they name, with results on one stream and messages on the other. */
final class CommandLineTool {

	private final CommandLine commands;

	CommandLineTool(Object command, PrintStream out, PrintStream err) {
		commands = new CommandLine(command);
		commands.setCaseInsensitiveEnumValuesAllowed(true);
		commands.setOut(new PrintWriter(out, true));
		commands.setErr(new PrintWriter(err, true));
		commands.setExecutionExceptionHandler((e, line, parsed) -> {
			line.getErr().println(explain(e));
			return ExitStatus.UNUSABLE;
		});
	}

	/** @return the exit status, one of {@link ExitStatus} */
	int run(String... arguments) {
		return commands.execute(arguments);
	}

	/** One line for a failure that no command foresaw. */
	static String explain(Throwable failure) {
		String reason = failure.getMessage() == null ? failure.getClass().getSimpleName() : failure.getMessage();
		return "padwright: cannot go on: " + reason;
	}
}
