package padwright.workbench.safe;

import java.nio.file.Path;
import java.util.Optional;

import org.eclipse.core.filebuffers.IFileBuffer;
import org.eclipse.core.filesystem.EFS;
import org.eclipse.core.resources.IFile;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.NullProgressMonitor;

import padwright.language.shop.ShopFolder;

/** Where files of the workbench are on disk, as the commands would name them. */
public final class OnDisk {

	private OnDisk() {
	}

	/** Where a file is on disk; nothing if it is elsewhere. */
	public static Optional<Path> path(IFile file) {
		return Optional.ofNullable(file.getLocation()).map(location -> ShopFolder.real(location.toPath()));
	}

	/** Where the file of a buffer is on disk; nothing if it is elsewhere. */
	public static Optional<Path> path(IFileBuffer buffer) {
		if (buffer.getFileStore() == null) {
			return Optional.empty();
		}
		try {
			var local = buffer.getFileStore().toLocalFile(EFS.NONE, new NullProgressMonitor());
			return Optional.ofNullable(local).map(file -> ShopFolder.real(file.toPath()));
		} catch (CoreException notLocal) {
			return Optional.empty();
		}
	}
}
