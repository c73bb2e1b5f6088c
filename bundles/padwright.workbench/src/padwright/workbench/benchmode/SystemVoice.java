package padwright.workbench.benchmode;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

import org.eclipse.core.runtime.ILog;

/** The voice of the system: a program that speaks what it is called with. */
final class SystemVoice {

	/** Programs and the option before the language, the first that is there is taken. */
	private static final List<List<String>> PROGRAMS = List.of(List.of("spd-say", "-l"), List.of("espeak-ng", "-v"),
			List.of("espeak", "-v"));

	private final List<String> command;
	private Process speaking;

	private SystemVoice(List<String> command) {
		this.command = command;
	}

	/**
	 * The voice that is installed, if there is one.
	 *
	 * @param path folders with programs, as the system lists them
	 */
	static Optional<SystemVoice> find(String path, Locale language) {
		return PROGRAMS.stream().flatMap(program -> file(path, program.get(0)).stream()
				.map(file -> new SystemVoice(List.of(file.toString(), program.get(1), language.getLanguage())))).findFirst();
	}

	private static Optional<Path> file(String path, String name) {
		return path == null ? Optional.empty() : Stream.of(path.split(File.pathSeparator))
				.filter(folder -> !folder.isBlank()).flatMap(folder -> in(folder, name).stream())
				.filter(Files::isExecutable).findFirst();
	}

	private static Optional<Path> in(String folder, String name) {
		try {
			return Optional.of(Path.of(folder, name));
		} catch (InvalidPathException noFolder) {
			return Optional.empty();
		}
	}

	/** Speaks, and breaks off what it was saying. */
	void say(String words) {
		hush();
		List<String> all = new ArrayList<>(command);
		all.add(words);
		try {
			speaking = new ProcessBuilder(all).redirectOutput(ProcessBuilder.Redirect.DISCARD)
					.redirectError(ProcessBuilder.Redirect.DISCARD).start();
		} catch (IOException mute) {
			ILog.of(SystemVoice.class).warn(mute.getMessage());
		}
	}

	/** Breaks off what it is saying. */
	void hush() {
		if (speaking != null) {
			speaking.destroy();
		}
	}
}
