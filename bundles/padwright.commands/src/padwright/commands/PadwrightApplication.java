package padwright.commands;

import java.io.PrintStream;
import java.io.PrintWriter;
import java.util.List;
import java.util.Locale;

import org.eclipse.equinox.app.IApplication;
import org.eclipse.equinox.app.IApplicationContext;

/** The command line as an Equinox application: its result is the exit status of the process. */
public final class PadwrightApplication implements IApplication {

	/** Speaks English everywhere, so that scripts can read it. */
	@Override
	public Object start(IApplicationContext context) {
		Locale.setDefault(Locale.Category.DISPLAY, Locale.ENGLISH);
		String[] arguments = (String[]) context.getArguments().get(IApplicationContext.APPLICATION_ARGS);
		return run(new Padwright(), arguments, System.out, System.err);
	}

	@Override
	public void stop() {
		// A command ends by itself.
	}

	/**
	 * Runs a command within another program, such as the workbench, in the language of that program.
	 *
	 * @return the exit status that the process would have had
	 */
	public static int run(List<String> arguments, PrintStream out, PrintStream err) {
		return run(new Padwright(), arguments.toArray(String[]::new), out, err);
	}

	/** Nothing may escape: Equinox would print a stack trace and still report success. */
	static int run(Object command, String[] arguments, PrintStream out, PrintStream err) {
		try {
			return new CommandLineTool(command, out, err).run(arguments);
		} catch (Throwable failure) {
			return CommandLineTool.fail(failure, new PrintWriter(err, true));
		} finally {
			out.flush();
			err.flush();
		}
	}
}
