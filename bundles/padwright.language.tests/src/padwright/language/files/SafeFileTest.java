package padwright.language.files;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermission;
import java.nio.file.attribute.PosixFileAttributeView;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import java.util.Set;
import java.util.concurrent.FutureTask;
import java.util.stream.Stream;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SafeFileTest {

	private static final byte[] OLD = bytes("old\n");
	private static final byte[] NEW = bytes("new and longer\n");

	@TempDir
	private Path folder;
	private Path file;

	private static byte[] bytes(String text) {
		return text.getBytes(StandardCharsets.UTF_8);
	}

	@BeforeEach
	void nameAFile() {
		file = folder.resolve("spring.plan");
	}

	/** As below a root that was changed: only the file itself can be asked what it can have. */
	@Test
	void permissionsAreKeptWhereTheDiskCannotBeTold() throws IOException {
		assumeTrue(file.getFileSystem().supportedFileAttributeViews().contains("posix"));
		Set<PosixFilePermission> own = PosixFilePermissions.fromString("rw-rw----");
		Files.setPosixFilePermissions(Files.write(file, OLD), own);
		Path aside = Files.write(folder.resolve("aside"), NEW);
		new Disk().permitLike(UntoldStores.of(file), UntoldStores.of(aside));
		assertEquals(own, Files.getPosixFilePermissions(aside));
	}

	/** The administrator could write it all the same; the mark is meant for everybody. */
	@Test
	void aFileMarkedAsNotToBeWrittenIsLeftAsItIs() throws IOException {
		Files.write(file, OLD);
		assertFalse(SafeFile.isProtected(file));
		assertTrue(file.toFile().setReadOnly());
		assertTrue(SafeFile.isProtected(file));
		assertThrows(IOException.class, () -> SafeFile.replace(file, NEW));
		assertThrows(IOException.class, () -> SafeFile.write(file, NEW));
		assertArrayEquals(OLD, Files.readAllBytes(file));
		assertOnly(file);
	}

	private void assertOnly(Path... expected) throws IOException {
		try (Stream<Path> files = Files.list(folder)) {
			assertEquals(Stream.of(expected).sorted().toList(), files.sorted().toList());
		}
	}

	@Test
	void aNewFileIsWritten() throws IOException {
		SafeFile.write(file, NEW);
		assertArrayEquals(NEW, Files.readAllBytes(file));
		assertOnly(file);
	}

	@Test
	void anOldFileIsReplacedAndKeptBeside() throws IOException {
		Files.write(file, OLD);
		Path backup = SafeFile.replace(file, OLD, NEW);
		assertArrayEquals(NEW, Files.readAllBytes(file));
		assertArrayEquals(OLD, Files.readAllBytes(backup));
		assertOnly(file, backup);
	}

	@Test
	void theBackupIsOfTheLastReplacement() throws IOException {
		Files.write(file, OLD);
		SafeFile.replace(file, OLD, NEW);
		Path backup = SafeFile.replace(file, NEW, OLD);
		assertArrayEquals(NEW, Files.readAllBytes(backup));
		assertOnly(file, backup);
	}

	@Test
	void aFileThatWasChangedMeanwhileIsLeftAlone() throws IOException {
		byte[] others = bytes("changed by somebody else\n");
		Files.write(file, others);
		assertThrows(IOException.class, () -> SafeFile.replace(file, OLD, NEW));
		assertArrayEquals(others, Files.readAllBytes(file));
		assertOnly(file);
	}

	@Test
	void aFileThatIsGoneIsNotMadeAgain() throws IOException {
		assertThrows(NoSuchFileException.class, () -> SafeFile.replace(file, OLD, NEW));
		assertOnly();
	}

	@Test
	void aLinkStaysALink() throws IOException {
		Path target = Files.write(Files.createDirectory(folder.resolve("elsewhere")).resolve("target.plan"), OLD);
		Files.createSymbolicLink(file, target);
		Path backup = SafeFile.replace(file, OLD, NEW);
		assertTrue(Files.isSymbolicLink(file));
		assertFalse(Files.isSymbolicLink(target));
		assertArrayEquals(NEW, Files.readAllBytes(target));
		assertEquals(target.toRealPath().getParent(), backup.getParent());
		assertOnly(file, target.getParent());
	}

	@Test
	void permissionsAreKept() throws IOException {
		assumePosix();
		Set<PosixFilePermission> permissions = PosixFilePermissions.fromString("rwxr-----");
		Files.write(file, OLD);
		Files.setPosixFilePermissions(file, permissions);
		SafeFile.replace(file, OLD, NEW);
		assertEquals(permissions, Files.getPosixFilePermissions(file));
	}

	@Test
	void aNewFileCanBeReadByOthers() throws IOException {
		assumePosix();
		SafeFile.write(file, NEW);
		assertEquals("rw-r--r--", PosixFilePermissions.toString(Files.getPosixFilePermissions(file)));
	}

	/** The store of the folder cannot be told everywhere, as in a root that is no mount of its own. */
	private void assumePosix() {
		assumeTrue(Files.getFileAttributeView(folder, PosixFileAttributeView.class) != null);
	}

	/** In the way stands a folder with something in it, which not even the administrator can move a file over. */
	@Test
	void aFailedMoveLeavesNothingBehind() throws IOException {
		Path inTheWay = Files.createDirectory(file);
		Path inside = Files.write(inTheWay.resolve("inside"), OLD);
		assertThrows(IOException.class, () -> SafeFile.write(file, NEW));
		assertOnly(inTheWay);
		assertArrayEquals(OLD, Files.readAllBytes(inside));
	}

	@Test
	void aBackupThatCannotBeWrittenLeavesTheFileAsItWas() throws IOException {
		Files.write(file, OLD);
		Path inTheWay = Files.createDirectory(folder.resolve("spring.plan.bak"));
		Files.write(inTheWay.resolve("inside"), OLD);
		assertThrows(IOException.class, () -> SafeFile.replace(file, OLD, NEW));
		assertArrayEquals(OLD, Files.readAllBytes(file));
		assertOnly(file, inTheWay);
	}

	@Test
	void aFolderThatIsReadOnlyLeavesTheFileAsItWas() throws IOException {
		assumePosix();
		Files.write(file, OLD);
		Files.setPosixFilePermissions(folder, PosixFilePermissions.fromString("r-xr-xr-x"));
		try {
			assumeTrue(!Files.isWritable(folder), "the administrator may write anywhere");
			assertThrows(IOException.class, () -> SafeFile.replace(file, OLD, NEW));
			assertArrayEquals(OLD, Files.readAllBytes(file));
			assertOnly(file);
		} finally {
			Files.setPosixFilePermissions(folder, PosixFilePermissions.fromString("rwxr-xr-x"));
		}
	}

	@Test
	void aMissingFolderIsAnError() {
		assertThrows(IOException.class, () -> SafeFile.write(folder.resolve("missing").resolve("spring.plan"), NEW));
	}

	/** A reader who opens the file at any moment while it is written over and over sees one content in full. */
	@Test
	void readersSeeTheOldOrTheNewContentInFull() throws Exception {
		byte[] first = bytes("1".repeat(200_000));
		byte[] second = bytes("2".repeat(100_000));
		Files.write(file, first);
		FutureTask<Void> writing = new FutureTask<>(() -> writeInTurn(List.of(second, first)));
		new Thread(writing).start();
		do {
			byte[] seen = Files.readAllBytes(file);
			assertArrayEquals(seen.length == first.length ? first : second, seen);
		} while (!writing.isDone());
		writing.get();
		assertOnly(file);
	}

	private Void writeInTurn(List<byte[]> contents) throws IOException {
		for (int round = 0; round < 50; round++) {
			SafeFile.write(file, contents.get(round % contents.size()));
		}
		return null;
	}
}
