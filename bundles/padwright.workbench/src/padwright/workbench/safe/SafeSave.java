package padwright.workbench.safe;

import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.file.Path;
import java.util.Optional;

import org.eclipse.core.filebuffers.ITextFileBuffer;
import org.eclipse.core.resources.IFile;
import org.eclipse.core.resources.IResource;
import org.eclipse.core.resources.ResourcesPlugin;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.Status;

import padwright.language.files.SafeFile;
import padwright.workbench.Messages;

/**
 * The one way in which the workbench writes a text that was edited: through the same safe file as the command line, so
 * that at every moment the old or the new content is on disk in full, and the old is kept beside it.
 */
public final class SafeSave {

	private SafeSave() {
	}

	/**
	 * Writes what a buffer holds to its file; afterwards the buffer is clean and its history of undo as it was.
	 *
	 * @param overwrite even what somebody else has changed on disk meanwhile
	 * @return whether the buffer is of a file on disk, and so was written
	 * @throws CoreException if it could not be written; the file and the buffer are as they were then
	 */
	public static boolean save(ITextFileBuffer buffer, boolean overwrite, IProgressMonitor monitor)
			throws CoreException {
		if (buffer.getLocation() == null) {
			return false;
		}
		IFile file = ResourcesPlugin.getWorkspace().getRoot().getFile(buffer.getLocation());
		Optional<Path> path = file.exists() ? OnDisk.path(file) : Optional.empty();
		if (path.isEmpty()) {
			return false;
		}
		if (!Protection.isLifted(path.get(), file)) {
			throw new CoreException(Status.CANCEL_STATUS);
		}
		LocalHistory.remember(file);
		byte[] content = buffer.getDocument().get().getBytes(Charset.forName(buffer.getEncoding()));
		try {
			write(path.get(), content, buffer, overwrite);
		} catch (IOException failed) {
			throw new CoreException(Status.error(Messages.get("save.failed", file.getName(), failed.getMessage()), failed));
		}
		file.refreshLocal(IResource.DEPTH_ZERO, monitor);
		// It finds its own text on disk, and so only takes note that nothing is left to save.
		buffer.revert(monitor);
		return true;
	}

	private static void write(Path path, byte[] content, ITextFileBuffer buffer, boolean overwrite)
			throws IOException {
		if (!overwrite && !buffer.isSynchronized()) {
			throw new IOException(Messages.get("save.changedOutside"));
		}
		SafeFile.replace(path, content);
	}
}
