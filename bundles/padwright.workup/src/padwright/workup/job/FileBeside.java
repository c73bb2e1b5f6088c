package padwright.workup.job;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Optional;

import org.eclipse.emf.common.util.URI;
import org.eclipse.emf.ecore.EObject;

/** A file that a document names by its path from where it lies itself. */
public final class FileBeside {

	private FileBeside() {
	}

	/** Whether a path leads on from a folder, for whoever opens the shop. */
	public static boolean isRelative(String path) {
		return !path.startsWith("/") && !path.contains("\\") && !path.contains(":");
	}

	/**
	 * Where the file should be; nothing for a document that lies in no file yet, or for words that are no relative path.
	 *
	 * @param element of the document
	 */
	public static Optional<Path> of(EObject element, String path) {
		URI place = element.eResource() == null ? null : element.eResource().getURI();
		if (path == null || !isRelative(path) || place == null || !place.isFile()) {
			return Optional.empty();
		}
		try {
			return Optional.of(Path.of(place.toFileString()).resolveSibling(path).normalize());
		} catch (InvalidPathException noPath) {
			return Optional.empty();
		}
	}
}
