package padwright.commands;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;

/** One run of the command line, as its user sees it. */
record CommandRun(int status, String out, String err) {

	static CommandRun of(Object... arguments) {
		ByteArrayOutputStream out = new ByteArrayOutputStream();
		ByteArrayOutputStream err = new ByteArrayOutputStream();
		String[] texts = Arrays.stream(arguments).map(Object::toString).toArray(String[]::new);
		int status = PadwrightApplication.run(new Padwright(), texts, stream(out), stream(err));
		return new CommandRun(status, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
	}

	private static PrintStream stream(ByteArrayOutputStream bytes) {
		return new PrintStream(bytes, true, StandardCharsets.UTF_8);
	}

	/** Whether a stack trace or the name of an exception reached the user. */
	boolean showsItsInside() {
		return (out + err).contains("\tat ") || (out + err).contains("Exception");
	}
}
