package padwright.workup.extensions;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;

import org.junit.jupiter.api.Test;

class ExtensionFoldersTest {

	private static List<Path> folders(String system, Map<String, String> environment, Map<String, String> properties) {
		return ExtensionFolders.of(system, environment, properties::get);
	}

	@Test
	void theProgramsOwnComesBeforeTheUsers() {
		assertEquals(List.of(Path.of("/opt/p/extensions"), Path.of("/home/k/.local/share/padwright/extensions")),
				folders("Linux", Map.of(), Map.of("padwright.home", "/opt/p", "user.home", "/home/k")));
	}

	/** The XDG Base Directory Specification takes an empty variable for none. */
	@Test
	void theUsersLieWhereTheSystemHasThem() {
		Map<String, String> home = Map.of("user.home", "/home/k");
		assertEquals(List.of(Path.of("/data/padwright/extensions")),
				folders("Linux", Map.of("XDG_DATA_HOME", "/data"), home));
		assertEquals(List.of(Path.of("/home/k/.local/share/padwright/extensions")),
				folders("Linux", Map.of("XDG_DATA_HOME", ""), home));
		assertEquals(List.of(Path.of("/home/k/Library/Application Support/Padwright/extensions")),
				folders("Mac OS X", Map.of(), home));
		assertEquals(List.of(Path.of("D/Padwright/extensions")),
				folders("Windows 11", Map.of("LOCALAPPDATA", "D"), home));
	}

	@Test
	void whoHasNoHomeHasNone() {
		assertEquals(List.of(), folders("Linux", Map.of(), Map.of()));
		assertEquals(List.of(), folders("Windows 11", Map.of(), Map.of("user.home", "C")));
	}
}
