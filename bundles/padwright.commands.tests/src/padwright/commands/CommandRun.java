package padwright.commands;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

import com.google.gson.JsonObject;
import com.google.gson.JsonParser;

/**
 * What a run of the command line gave.
 *
 * @param out results
 * @param err messages
 */
record CommandRun(int status, String out, String err) {

	/** The folder of the examples; tests run in the folder of their own bundle. */
	static final Path EXAMPLES = Path.of("../../examples/shop");

	static CommandRun padwright(Object... arguments) {
		ByteArrayOutputStream out = new ByteArrayOutputStream();
		ByteArrayOutputStream err = new ByteArrayOutputStream();
		String[] words = new String[arguments.length];
		for (int index = 0; index < words.length; index++) {
			words[index] = arguments[index].toString();
		}
		int status = Main.run(List.of(words), stream(out), stream(err));
		return new CommandRun(status, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
	}

	/** Writes a document for a test. */
	static Path write(Path folder, String name, String text) {
		try {
			Files.createDirectories(folder);
			return Files.writeString(folder.resolve(name), text);
		} catch (IOException failed) {
			throw new UncheckedIOException(failed);
		}
	}

	/** Whether a stack trace or the name of an exception reached the user. */
	boolean showsItsInside() {
		return (out + err).contains("\tat ") || (out + err).contains("Exception");
	}

	JsonObject json() {
		return JsonParser.parseString(out).getAsJsonObject();
	}

	/** The line of the results that begins with {@code start}, its columns parted by one bar. */
	String line(String start) {
		return out.lines().filter(line -> line.startsWith(start)).findFirst()
				.map(line -> line.replaceAll(" {2,}", "|")).orElse("no line begins with " + start + " in:\n" + out);
	}

	private static PrintStream stream(ByteArrayOutputStream bytes) {
		return new PrintStream(bytes, true, StandardCharsets.UTF_8);
	}
}
