package padwright.commands;

import java.io.IOException;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.io.UncheckedIOException;

import padwright.language.files.UnreadableException;
import picocli.CommandLine;
import picocli.CommandLine.RunLast;

/** Parses the arguments and runs the command they name, with results on one stream and messages on the other. */
final class CommandLineTool {

	private final CommandLine commands;

	CommandLineTool(CommandLine commands, PrintStream out, PrintStream err) {
		this.commands = commands;
		commands.setCaseInsensitiveEnumValuesAllowed(true);
		commands.setOut(new PrintWriter(out, true));
		commands.setErr(new PrintWriter(err, true));
		commands.setExecutionStrategy(new SpokenLanguage(new ToldUnit(new RunLast())));
		commands.setExecutionExceptionHandler((failure, line, parsed) -> fail(failure, line.getErr()));
	}

	/** @return the exit status, one of {@link ExitStatus} */
	int run(String... arguments) {
		return commands.execute(arguments);
	}

	/**
	 * One line for what ended a command: what the user gave or the disk refused, or else a fault of the program itself.
	 *
	 * @return the exit status
	 */
	static int fail(Throwable failure, PrintWriter err) {
		String reason = failure.getMessage() == null ? failure.getClass().getSimpleName() : failure.getMessage();
		if (isOfTheInput(failure)) {
			err.println("padwright: cannot go on: " + reason);
			return ExitStatus.UNUSABLE;
		}
		err.println("padwright: a fault of the program, not of your files: " + reason + ". "
				+ FaultLog.keep(failure).map(log -> "Please send " + log + " to whoever you have Padwright from")
						.orElse("No record of it could be kept"));
		return ExitStatus.FAULT;
	}

	private static boolean isOfTheInput(Throwable failure) {
		return failure instanceof InputException || failure instanceof UnreadableException
				|| failure instanceof IOException || failure instanceof UncheckedIOException;
	}
}
