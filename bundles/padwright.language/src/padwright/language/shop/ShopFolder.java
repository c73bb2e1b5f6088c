package padwright.language.shop;

import java.io.IOException;
import java.nio.file.FileVisitResult;
import java.nio.file.FileVisitor;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

import padwright.language.files.UnreadableException;
import padwright.language.messages.Messages;

/**
 * The folder whose files may name each other. It is the nearest one upward that holds a file {@value #MARKER}, or
 * else the folder at hand itself, each with all folders below but hidden ones. Links to folders below are not followed,
 * so that a walk ends; links to files are.
 */
public final class ShopFolder {

	/** A file of this name, empty or not, marks the top of a shop folder. */
	public static final String MARKER = "padwright.shop";
	/** More files than this are taken for a folder given by mistake. */
	public static final int MOST_FILES = 50_000;

	private static final Set<String> EXTENSIONS = Set.of("keys", "stock", "plan");

	private ShopFolder() {
	}

	/** Whether a file is a document by its extension. */
	public static boolean isDocument(Path file) {
		String name = file.getFileName().toString();
		int dot = name.lastIndexOf('.');
		return dot > 0 && EXTENSIONS.contains(name.substring(dot + 1));
	}

	/** The top of the shop around a file or folder. */
	public static Path around(Path fileOrFolder) {
		Path absolute = real(fileOrFolder);
		Path folder = Files.isDirectory(absolute) ? absolute : absolute.getParent();
		for (Path top = folder; top != null; top = top.getParent()) {
			if (isMarked(top)) {
				return top;
			}
		}
		return folder;
	}

	/** Where a path leads, links resolved; as written where there is nothing. */
	public static Path real(Path path) {
		try {
			return path.toRealPath();
		} catch (IOException nothingThere) {
			return path.toAbsolutePath().normalize();
		}
	}

	/** Whether a folder is marked as the top of a shop. */
	public static boolean isMarked(Path folder) {
		return Files.isRegularFile(folder.resolve(MARKER));
	}

	/**
	 * All documents in a folder and below, sorted by path.
	 *
	 * @throws UnreadableException if there are more than {@link #MOST_FILES}, or the folder cannot be read
	 */
	public static List<Path> documents(Path folder) throws UnreadableException {
		return documents(folder, Integer.MAX_VALUE);
	}

	/** As {@link #documents(Path)}, but of the folder itself alone. */
	public static List<Path> documentsBeside(Path folder) throws UnreadableException {
		return documents(folder, 1);
	}

	private static List<Path> documents(Path folder, int depth) throws UnreadableException {
		List<Path> found = new ArrayList<>();
		try {
			Files.walkFileTree(folder, Set.of(), depth, collector(folder, found));
		} catch (IOException unreadable) {
			throw new UnreadableException(Messages.of("file.unread"));
		}
		if (found.size() > MOST_FILES) {
			throw new UnreadableException(Messages.of("folder.large", MOST_FILES));
		}
		found.sort(null);
		return found;
	}

	private static FileVisitor<Path> collector(Path top, List<Path> found) {
		return new SimpleFileVisitor<>() {
			@Override
			public FileVisitResult preVisitDirectory(Path folder, BasicFileAttributes attributes) {
				boolean hidden = !folder.equals(top) && folder.getFileName().toString().startsWith(".");
				return hidden ? FileVisitResult.SKIP_SUBTREE : FileVisitResult.CONTINUE;
			}

			@Override
			public FileVisitResult visitFile(Path file, BasicFileAttributes attributes) {
				if (isDocument(file) && Files.isRegularFile(file)) {
					found.add(file);
				}
				return found.size() > MOST_FILES ? FileVisitResult.TERMINATE : FileVisitResult.CONTINUE;
			}

			@Override
			public FileVisitResult visitFileFailed(Path file, IOException failure) {
				return FileVisitResult.CONTINUE;
			}
		};
	}
}
