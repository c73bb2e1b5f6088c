package padwright.language.files;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.Arrays;

/**
 * The one way in which Padwright writes files: aside first, then in place in one move, so that at every moment the old
 * or the new content is there in full.
 */
public final class SafeFile {

	private static final String BACKUP = ".bak";

	private SafeFile() {
	}

	/** Writes {@code content} to {@code file}, whether or not it exists. */
	public static void write(Path file, byte[] content) throws IOException {
		Path target = Files.exists(file) ? file.toRealPath() : file.toAbsolutePath();
		Path aside = Files.createTempFile(target.getParent(), "." + target.getFileName(), ".tmp");
		try {
			writeThrough(aside, content);
			likeTheOld(target, aside);
			move(aside, target);
		} finally {
			Files.deleteIfExists(aside);
		}
	}

	/**
	 * Replaces the content of an existing file and keeps the old beside it.
	 *
	 * @param expected what the file held when it was read
	 * @return the backup
	 * @throws IOException if it holds something else by now, or cannot be written; the file is as it was then
	 */
	public static Path replace(Path file, byte[] expected, byte[] content) throws IOException {
		if (!Arrays.equals(Files.readAllBytes(file), expected)) {
			throw new IOException("it was changed by somebody else meanwhile");
		}
		return replace(file, content);
	}

	/**
	 * Replaces the content of an existing file, whatever it is, and keeps the old beside it.
	 *
	 * @return the backup
	 * @throws IOException if it cannot be written; the file is as it was then
	 */
	public static Path replace(Path file, byte[] content) throws IOException {
		Path target = file.toRealPath();
		if (!Files.isWritable(target)) {
			throw new IOException("it is write-protected");
		}
		Path backup = target.resolveSibling(target.getFileName() + BACKUP);
		write(backup, Files.readAllBytes(target));
		write(target, content);
		return backup;
	}

	private static void writeThrough(Path file, byte[] content) throws IOException {
		try (FileChannel channel = FileChannel.open(file, StandardOpenOption.WRITE,
				StandardOpenOption.TRUNCATE_EXISTING)) {
			ByteBuffer buffer = ByteBuffer.wrap(content);
			while (buffer.hasRemaining()) {
				channel.write(buffer);
			}
			channel.force(true);
		}
	}

	private static void likeTheOld(Path old, Path aside) throws IOException {
		if (Files.getFileStore(aside).supportsFileAttributeView("posix")) {
			Files.setPosixFilePermissions(aside, Files.exists(old) ? Files.getPosixFilePermissions(old)
					: PosixFilePermissions.fromString("rw-r--r--"));
		}
	}

	private static void move(Path aside, Path target) throws IOException {
		try {
			Files.move(aside, target, StandardCopyOption.ATOMIC_MOVE);
		} catch (AtomicMoveNotSupportedException noAtomicMoveHere) {
			Files.move(aside, target, StandardCopyOption.REPLACE_EXISTING);
		}
	}
}
