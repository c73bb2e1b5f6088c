package padwright.commands;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;

/** Keeps what is needed to find a fault of the program, in a file that can be read before it is sent. */
final class FaultLog {

	private FaultLog() {
	}

	/** The file, among those that the machine takes away by itself; nothing where none can be written. */
	static Optional<Path> keep(Throwable failure) {
		try {
			return Optional.of(Files.writeString(Files.createTempFile("padwright-fault-", ".log"), text(failure)));
		} catch (IOException noRoom) {
			return Optional.empty();
		}
	}

	private static String text(Throwable failure) {
		StringWriter text = new StringWriter();
		PrintWriter lines = new PrintWriter(text);
		lines.println(ProductVersion.told());
		lines.println("Java " + System.getProperty("java.version") + " on " + System.getProperty("os.name") + " "
				+ System.getProperty("os.version") + " " + System.getProperty("os.arch"));
		failure.printStackTrace(lines);
		lines.flush();
		return text.toString();
	}
}
