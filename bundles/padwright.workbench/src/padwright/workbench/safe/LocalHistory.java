package padwright.workbench.safe;

import org.eclipse.core.filesystem.EFS;
import org.eclipse.core.filesystem.IFileStore;
import org.eclipse.core.internal.resources.Resource;
import org.eclipse.core.resources.IFile;
import org.eclipse.core.runtime.CoreException;

/** The states that a file had before; the workspace only remembers by itself what was saved through it. */
final class LocalHistory {

	private LocalHistory() {
	}

	/** Remembers what a file holds now. */
	static void remember(IFile file) throws CoreException {
		IFileStore store = EFS.getStore(file.getLocationURI());
		((Resource) file).getLocalManager().getHistoryStore().addState(file.getFullPath(), store, store.fetchInfo(),
				false);
	}
}
