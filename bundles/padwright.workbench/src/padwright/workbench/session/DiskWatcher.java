package padwright.workbench.session;

import java.util.ArrayList;
import java.util.List;

import org.eclipse.core.resources.IFile;
import org.eclipse.core.resources.IResourceChangeEvent;
import org.eclipse.core.resources.IResourceChangeListener;
import org.eclipse.core.resources.IResourceDelta;
import org.eclipse.core.resources.ResourcesPlugin;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.ILog;
import org.eclipse.lsp4j.DidChangeWatchedFilesParams;
import org.eclipse.lsp4j.FileChangeType;
import org.eclipse.lsp4j.FileEvent;

import padwright.language.ide.server.LocalServer;
import padwright.language.shop.ShopFolder;

/** Tells the server of files that came, went or changed on disk. */
final class DiskWatcher implements IResourceChangeListener {

	private final LocalServer server;

	DiskWatcher(LocalServer server) {
		this.server = server;
	}

	void start() {
		ResourcesPlugin.getWorkspace().addResourceChangeListener(this, IResourceChangeEvent.POST_CHANGE);
	}

	void stop() {
		ResourcesPlugin.getWorkspace().removeResourceChangeListener(this);
	}

	@Override
	public void resourceChanged(IResourceChangeEvent event) {
		List<FileEvent> changes = new ArrayList<>();
		try {
			event.getDelta().accept(delta -> {
				collect(delta, changes);
				return true;
			});
		} catch (CoreException unreadable) {
			ILog.of(DiskWatcher.class).log(unreadable.getStatus());
		}
		if (!changes.isEmpty()) {
			server.workspace().didChangeWatchedFiles(new DidChangeWatchedFilesParams(changes));
		}
	}

	private static void collect(IResourceDelta delta, List<FileEvent> changes) {
		if (!(delta.getResource() instanceof IFile file) || !isOfInterest(file) || !isOfContent(delta)) {
			return;
		}
		FileChangeType type = switch (delta.getKind()) {
			case IResourceDelta.ADDED -> FileChangeType.Created;
			case IResourceDelta.REMOVED -> FileChangeType.Deleted;
			default -> FileChangeType.Changed;
		};
		Documents.uri(file).ifPresent(uri -> changes.add(new FileEvent(uri, type)));
	}

	private static boolean isOfInterest(IFile file) {
		return file.getName().equals(ShopFolder.MARKER)
				|| file.getLocation() != null && ShopFolder.isDocument(file.getLocation().toPath());
	}

	/** Markers are changes too, but not of what is in a file. */
	private static boolean isOfContent(IResourceDelta delta) {
		return delta.getKind() != IResourceDelta.CHANGED || (delta.getFlags() & IResourceDelta.CONTENT) != 0;
	}
}
