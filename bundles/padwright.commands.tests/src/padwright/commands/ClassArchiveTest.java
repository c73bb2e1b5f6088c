package padwright.commands;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.stream.Stream;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The archive itself is made and used with the unpacked product; here is when one is made. */
class ClassArchiveTest {

	@TempDir
	private Path folder;

	@Test
	void whoFindsAnotherMakingItLeavesItAlone() throws IOException {
		Path archive = folder.resolve("caches/commands.jsa");
		Files.createDirectories(archive.getParent());
		Files.createFile(archive.resolveSibling("commands.jsa.making"));
		new ClassArchive(archive).keepUpToDate();
		assertEquals(List.of("commands.jsa.making"), names(archive.getParent()));
	}

	/** As after a loss of power. */
	@Test
	void aMarkLeftBehindHoldsNobodyUpForEver() throws IOException {
		ClassArchive archive = new ClassArchive(folder.resolve("commands.jsa"));
		archive.claim();
		assertThrows(IOException.class, archive::claim);
		Files.setLastModifiedTime(folder.resolve("commands.jsa.making"),
				FileTime.from(Instant.now().minus(Duration.ofHours(1))));
		archive.claim();
		assertThrows(IOException.class, archive::claim);
	}

	@Test
	void aPlaceThatCannotBeIsNoFault() throws IOException {
		Path file = Files.createFile(folder.resolve("file"));
		new ClassArchive(file.resolve("commands.jsa")).keepUpToDate();
		assertEquals(List.of("file"), names(folder));
	}

	@Test
	void withoutTheScriptThereIsNone() {
		assertFalse(ClassArchive.ofThisProgram().isPresent());
		assertEquals(ExitStatus.UNUSABLE, CommandRun.padwright("prepare").status());
	}

	private static List<String> names(Path folder) throws IOException {
		try (Stream<Path> files = Files.list(folder)) {
			return files.map(file -> file.getFileName().toString()).sorted().toList();
		}
	}
}
