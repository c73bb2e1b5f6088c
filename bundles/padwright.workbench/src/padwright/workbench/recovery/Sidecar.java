package padwright.workbench.recovery;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;

import padwright.language.files.SafeFile;

/**
 * What is typed but not saved, kept beside its file under a hidden name, so that a crash or a lost battery costs seconds.
 * It goes when the text is saved or given up.
 */
final class Sidecar {

	private static final String END = ".unsaved";

	private final Path file;

	private Sidecar(Path file) {
		this.file = file;
	}

	static Sidecar of(Path document) {
		return new Sidecar(document.resolveSibling("." + document.getFileName() + END));
	}

	Path file() {
		return file;
	}

	/** Keeps a text; the one kept before is there until the new one is in full. */
	void keep(String text) throws IOException {
		SafeFile.write(file, text.getBytes(StandardCharsets.UTF_8));
	}

	void drop() throws IOException {
		Files.deleteIfExists(file);
	}

	/** The text that was kept, if any was. */
	Optional<String> text() throws IOException {
		return Files.isRegularFile(file) ? Optional.of(Files.readString(file)) : Optional.empty();
	}
}
