package padwright.language.files;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.PosixFileAttributeView;
import java.nio.file.attribute.PosixFilePermission;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.Collections;
import java.util.Set;

/** The steps of writing a file, each of which can fail. */
class Disk {

	private static final Set<PosixFilePermission> WRITING = Set.of(PosixFilePermission.OWNER_WRITE,
			PosixFilePermission.GROUP_WRITE, PosixFilePermission.OTHERS_WRITE);

	/** A new empty file beside {@code target}. */
	Path createBeside(Path target) throws IOException {
		return Files.createTempFile(target.getParent(), "." + target.getFileName(), ".tmp");
	}

	/** Writes all of {@code content}, and returns once it is on the disk. */
	void write(Path file, byte[] content) throws IOException {
		try (FileChannel channel = FileChannel.open(file, StandardOpenOption.WRITE,
				StandardOpenOption.TRUNCATE_EXISTING)) {
			ByteBuffer buffer = ByteBuffer.wrap(content);
			while (buffer.hasRemaining()) {
				channel.write(buffer);
			}
			channel.force(true);
		}
	}

	/** Gives {@code file} the permissions of {@code model}, or those of a usual file if there is none. */
	void permitLike(Path model, Path file) throws IOException {
		PosixFileAttributeView permissions = Files.getFileAttributeView(file, PosixFileAttributeView.class);
		if (permissions == null) {
			return;
		}
		Set<PosixFilePermission> right = Files.exists(model) ? Files.getPosixFilePermissions(model)
				: PosixFilePermissions.fromString("rw-r--r--");
		// Where files cannot have permissions of their own, all have the same, and setting them fails.
		if (!permissions.readAttributes().permissions().equals(right)) {
			permissions.setPermissions(right);
		}
	}

	/** Whether {@code file} is marked as not to be written, even if whoever runs the program could. */
	boolean isProtected(Path file) throws IOException {
		PosixFileAttributeView permissions = Files.getFileAttributeView(file, PosixFileAttributeView.class);
		return !Files.isWritable(file) || permissions != null && Collections.disjoint(
				permissions.readAttributes().permissions(), WRITING);
	}

	/** Puts {@code file} in the place of {@code target}. */
	void move(Path file, Path target) throws IOException {
		try {
			Files.move(file, target, StandardCopyOption.ATOMIC_MOVE);
		} catch (AtomicMoveNotSupportedException noAtomicMoveHere) {
			Files.move(file, target, StandardCopyOption.REPLACE_EXISTING);
		}
	}

	/** Takes away what is left of a file that was not moved. */
	void tidy(Path file) throws IOException {
		Files.deleteIfExists(file);
	}
}
