package padwright.language.files;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;

import padwright.language.messages.Messages;

/**
 * The one way in which Padwright writes files: aside first, then in place in one move, so that at every moment the old
 * or the new content is there in full.
 */
public final class SafeFile {

	private static final String BACKUP = ".bak";
	private static final SafeFile ON_DISK = new SafeFile(new Disk());

	private final Disk disk;

	SafeFile(Disk disk) {
		this.disk = disk;
	}

	/**
	 * Writes {@code content} to {@code file}, whether or not it exists.
	 *
	 * @throws IOException if it cannot be written, or exists and is marked as not to be
	 */
	public static void write(Path file, byte[] content) throws IOException {
		if (Files.exists(file)) {
			ON_DISK.requireUnprotected(file.toRealPath());
		}
		ON_DISK.put(file, content);
	}

	/**
	 * Replaces the content of an existing file and keeps the old beside it.
	 *
	 * @param expected what the file held when it was read
	 * @return the backup
	 * @throws IOException if it holds something else by now, or cannot be written; the file is as it was then
	 */
	public static Path replace(Path file, byte[] expected, byte[] content) throws IOException {
		return ON_DISK.exchange(file, expected, content);
	}

	/**
	 * Replaces the content of an existing file, whatever it is, and keeps the old beside it.
	 *
	 * @return the backup
	 * @throws IOException if it cannot be written; the file is as it was then
	 */
	public static Path replace(Path file, byte[] content) throws IOException {
		return replace(file, Files.readAllBytes(file), content);
	}

	/** Whether {@code file} is marked as not to be written; {@link #replace} then refuses to. */
	public static boolean isProtected(Path file) throws IOException {
		return ON_DISK.disk.isProtected(file.toRealPath());
	}

	void put(Path file, byte[] content) throws IOException {
		Path target = Files.exists(file) ? file.toRealPath() : file.toAbsolutePath();
		Path aside = disk.createBeside(target);
		try {
			disk.write(aside, content);
			disk.permitLike(target, aside);
			disk.move(aside, target);
		} finally {
			disk.tidy(aside);
		}
	}

	Path exchange(Path file, byte[] expected, byte[] content) throws IOException {
		Path target = file.toRealPath();
		requireUnprotected(target);
		requireUnchanged(target, expected);
		Path backup = target.resolveSibling(target.getFileName() + BACKUP);
		put(backup, expected);
		requireUnchanged(target, expected);
		put(target, content);
		return backup;
	}

	private void requireUnprotected(Path target) throws IOException {
		if (disk.isProtected(target)) {
			throw new IOException(Messages.of("file.protected"));
		}
	}

	private static void requireUnchanged(Path target, byte[] expected) throws IOException {
		if (!Arrays.equals(Files.readAllBytes(target), expected)) {
			throw new IOException(Messages.of("file.changedMeanwhile"));
		}
	}
}
