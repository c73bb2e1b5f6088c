package padwright.workup.extensions;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;

/** Where extensions are looked for: a folder beside the program, and one of the user's own. */
final class ExtensionFolders {

	private static final String NAME = "extensions";
	/** The folder that the program was unpacked to; its start scripts say it. */
	private static final String PROGRAM = "padwright.home";

	private ExtensionFolders() {
	}

	/** Those of this process, whether they are there or not. */
	static List<Path> ofThisProcess() {
		return of(System.getProperty("os.name"), Map.copyOf(System.getenv()), System::getProperty);
	}

	/**
	 * Those of any system: on Windows below its folder for local data, on macOS in the library, elsewhere as the XDG Base
	 * Directory Specification has it.
	 */
	static List<Path> of(String system, Map<String, String> environment, UnaryOperator<String> properties) {
		List<Path> folders = new ArrayList<>();
		said(properties.apply(PROGRAM)).map(program -> Path.of(program, NAME)).ifPresent(folders::add);
		ofUser(system.toLowerCase(Locale.ROOT), environment, said(properties.apply("user.home"))).ifPresent(folders::add);
		return List.copyOf(folders);
	}

	private static Optional<Path> ofUser(String system, Map<String, String> environment, Optional<String> home) {
		if (system.startsWith("windows")) {
			return said(environment.get("LOCALAPPDATA")).map(data -> Path.of(data, "Padwright", NAME));
		}
		if (system.startsWith("mac")) {
			return home.map(own -> Path.of(own, "Library", "Application Support", "Padwright", NAME));
		}
		return said(environment.get("XDG_DATA_HOME")).map(Path::of).or(() -> home.map(own -> Path.of(own, ".local", "share")))
				.map(data -> data.resolve("padwright").resolve(NAME));
	}

	private static Optional<String> said(String text) {
		return Optional.ofNullable(text).filter(word -> !word.isBlank());
	}
}
