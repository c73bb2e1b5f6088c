package padwright.workbench.wizards;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

import org.eclipse.core.resources.IFile;
import org.eclipse.core.resources.IFolder;
import org.eclipse.core.resources.IResource;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.Status;

import padwright.language.files.SafeFile;
import padwright.workbench.Messages;

/** Writes new documents into a shop, in full or not at all. */
final class NewDocument {

	private NewDocument() {
	}

	/** The file of a document to be; whether or not it is there. */
	static Path path(IFolder shop, String path) {
		return shop.getLocation().toPath().resolve(path);
	}

	/**
	 * Writes a document.
	 *
	 * @throws CoreException if there is one already, or it cannot be written
	 */
	static IFile write(IFolder shop, String path, String text) throws CoreException {
		Path file = path(shop, path);
		try {
			Files.createDirectories(file.getParent());
			if (Files.exists(file)) {
				throw new IOException(Messages.get("new.exists", path));
			}
			SafeFile.write(file, text.getBytes(StandardCharsets.UTF_8));
		} catch (IOException failed) {
			throw new CoreException(
					Status.error(Messages.get("save.failed", file.getFileName(), failed.getLocalizedMessage()), failed));
		}
		shop.refreshLocal(IResource.DEPTH_INFINITE, null);
		return shop.getFile(path);
	}
}
