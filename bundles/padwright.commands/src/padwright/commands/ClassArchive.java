package padwright.commands;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

/**
 * What Java needs to know of our classes, in a file that the next start of a command maps instead of reading and judging
 * them all again. Java passes over one that is not of this Java and these classes, so a wrong one costs time and nothing
 * else; and so does a place that cannot be written.
 *
 * @param file the archive; beside it lie the note of what it was made for, and for a while the mark of who makes it
 */
record ClassArchive(Path file) {

	/** Where the start script looks for the archive first; not set where there is no such place. */
	private static final String PLACE = "padwright.classes";
	/** The folder of the program; the script looks there, too, for what an installer has made for all users. */
	private static final String HOME = "padwright.home";
	private static final Duration LONGEST_MAKING = Duration.ofMinutes(10);

	/** Nothing where the program was not started by its script. */
	static Optional<ClassArchive> ofThisProgram() {
		return Optional.ofNullable(System.getProperty(PLACE)).map(Path::of).map(ClassArchive::new);
	}

	/** Has a process of its own make the archive if there is none for this program, and does not wait for it. */
	void keepUpToDate() {
		try {
			if (isUpToDate()) {
				return;
			}
			if (ofAllUsers().isUpToDate()) {
				Files.deleteIfExists(file);
			} else {
				claim();
				new ProcessBuilder(java(List.of(Main.class.getName(), "prepare")))
						.redirectOutput(ProcessBuilder.Redirect.DISCARD).redirectError(ProcessBuilder.Redirect.DISCARD)
						.directory(file.getParent().toFile()).start();
			}
		} catch (IOException | RuntimeException noArchive) {
			// Starts take longer, that is all.
		}
	}

	/**
	 * Makes the archive from a session of practice, in a process of its own.
	 *
	 * @return whether it is there now
	 * @throws IOException if it cannot be written where it belongs
	 */
	boolean make() throws IOException {
		Files.createDirectories(file.getParent());
		Path made = beside("." + UUID.randomUUID());
		try {
			boolean isMade = practise(made) && Files.isRegularFile(made);
			if (isMade) {
				Files.move(made, file, StandardCopyOption.ATOMIC_MOVE);
			}
			Files.writeString(note(), madeFor());
			return isMade;
		} finally {
			Files.deleteIfExists(made);
			Files.deleteIfExists(making());
		}
	}

	private boolean practise(Path archive) throws IOException {
		Process practice = new ProcessBuilder(java(List.of("-XX:ArchiveClassesAtExit=" + archive,
				Practice.class.getName()))).redirectOutput(ProcessBuilder.Redirect.DISCARD)
				.redirectError(ProcessBuilder.Redirect.DISCARD).start();
		practice.getOutputStream().close();
		try {
			return practice.waitFor() == 0;
		} catch (InterruptedException stopped) {
			practice.destroy();
			Thread.currentThread().interrupt();
			return false;
		}
	}

	/** As the start script runs commands; an archive serves only the class path that it was made with. */
	private List<String> java(List<String> options) {
		List<String> words = new ArrayList<>(List.of(Path.of(System.getProperty("java.home"), "bin", "java").toString(),
				"-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC", "-Xlog:disable", "-Djava.awt.headless=true",
				"-Dfile.encoding=UTF-8", set(PLACE, file.toString()), set(HOME, home().toString()), "-cp", System.getProperty("java.class.path")));
		words.addAll(options);
		return words;
	}

	private static String set(String property, String value) {
		return "-D" + property + "=" + value;
	}

	/** The folder of the program. */
	static Path home() {
		return Path.of(System.getProperty(HOME, ""));
	}

	private static ClassArchive ofAllUsers() {
		return new ClassArchive(home().resolve("configuration").resolve("commands.jsa"));
	}

	private boolean isUpToDate() throws IOException {
		return Files.isRegularFile(note()) && Files.readString(note()).equals(madeFor());
	}

	/** Fails where another makes it now. Who was ended while making it leaves the mark behind, but not for ever. */
	void claim() throws IOException {
		Files.createDirectories(file.getParent());
		if (Files.exists(making())
				&& Files.getLastModifiedTime(making()).toInstant().isBefore(Instant.now().minus(LONGEST_MAKING))) {
			Files.deleteIfExists(making());
		}
		Files.createFile(making());
	}

	private static String madeFor() {
		return String.join("\n", System.getProperty("java.vm.version"), System.getProperty("java.home"),
				System.getProperty("java.class.path"), ProductVersion.told(), "");
	}

	private Path note() {
		return beside(".txt");
	}

	private Path making() {
		return beside(".making");
	}

	private Path beside(String ending) {
		return file.resolveSibling(file.getFileName() + ending);
	}
}
