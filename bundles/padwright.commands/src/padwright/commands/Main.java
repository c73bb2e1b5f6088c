package padwright.commands;

import java.io.PrintStream;
import java.io.PrintWriter;
import java.util.List;
import java.util.Locale;
import java.util.function.Supplier;

import padwright.workup.extensions.Extensions;
import picocli.CommandLine;

/** The command line as a plain program, without the module framework that the window needs. */
public final class Main {

	private Main() {
	}

	/** Runs one command and ends the process with its exit status. */
	public static void main(String[] arguments) {
		int status = inEnglish(arguments);
		ClassArchive.ofThisProgram().ifPresent(ClassArchive::keepUpToDate);
		System.exit(status);
	}

	/** Speaks English everywhere, so that scripts can read it. The version is told without a look at any command. */
	static int inEnglish(String... arguments) {
		if (arguments.length == 1 && arguments[0].equals("--version")) {
			System.out.println(ProductVersion.told());
			return ExitStatus.CLEAN;
		}
		Locale.setDefault(Locale.Category.DISPLAY, Locale.ENGLISH);
		Extensions.installed().onLeftOut(left -> System.err.println("padwright: " + left.inWords()));
		return run(List.of(arguments), System.out, System.err);
	}

	/**
	 * Runs a command within another program, such as the workbench, in the language of that program. Nothing escapes: not
	 * even an error of Java ends without a status and a line that tells of it.
	 *
	 * @return the exit status that the process would have had
	 */
	public static int run(List<String> arguments, PrintStream out, PrintStream err) {
		String[] words = arguments.toArray(String[]::new);
		return run(() -> Padwright.commandLine(words), words, out, err);
	}

	static int run(Supplier<CommandLine> commands, String[] arguments, PrintStream out, PrintStream err) {
		try {
			return new CommandLineTool(commands.get(), out, err).run(arguments);
		} catch (Throwable failure) {
			return CommandLineTool.fail(failure, new PrintWriter(err, true));
		} finally {
			out.flush();
			err.flush();
		}
	}
}
