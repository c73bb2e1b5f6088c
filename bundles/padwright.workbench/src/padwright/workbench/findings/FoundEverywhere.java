package padwright.workbench.findings;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ConcurrentSkipListMap;
import java.util.function.Consumer;

import org.eclipse.core.resources.IFile;
import org.eclipse.core.resources.IMarkerDelta;
import org.eclipse.core.resources.IResource;
import org.eclipse.core.resources.IResourceChangeEvent;
import org.eclipse.core.resources.IResourceChangeListener;
import org.eclipse.core.resources.ResourcesPlugin;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.ICoreRunnable;
import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.jobs.Job;

import padwright.workbench.Messages;
import padwright.workbench.session.Finding;

/** Keeps what is to be put right in all open shops up to date, document by document, in the background. */
final class FoundEverywhere implements IResourceChangeListener {

	/** Findings come one after the other while somebody types; looking at each would flicker. */
	private static final int PAUSE_MILLISECONDS = 200;

	private final Map<String, FoundIn> byFile = new ConcurrentSkipListMap<>();
	private final Set<IFile> changed = ConcurrentHashMap.newKeySet();
	private final Consumer<List<FoundIn>> onFound;
	private final Job work = Job.createSystem(Messages.get("session.findings"), (ICoreRunnable) monitor -> work());

	/** @param onFound told in the background, the documents with the gravest first */
	FoundEverywhere(Consumer<List<FoundIn>> onFound) {
		this.onFound = onFound;
	}

	void start() {
		ResourcesPlugin.getWorkspace().addResourceChangeListener(this, IResourceChangeEvent.POST_CHANGE);
		try {
			for (var marker : ResourcesPlugin.getWorkspace().getRoot().findMarkers(Finding.MARKER, true,
					IResource.DEPTH_INFINITE)) {
				changed.add((IFile) marker.getResource());
			}
		} catch (CoreException gone) {
			ILog.of(FoundEverywhere.class).log(gone.getStatus());
		}
		work.schedule();
	}

	void stop() {
		ResourcesPlugin.getWorkspace().removeResourceChangeListener(this);
		work.cancel();
	}

	@Override
	public void resourceChanged(IResourceChangeEvent event) {
		IMarkerDelta[] deltas = event.findMarkerDeltas(Finding.MARKER, true);
		for (IMarkerDelta delta : deltas) {
			if (delta.getResource() instanceof IFile file) {
				changed.add(file);
			}
		}
		if (deltas.length > 0) {
			work.schedule(PAUSE_MILLISECONDS);
		}
	}

	private void work() {
		for (IFile file : List.copyOf(changed)) {
			changed.remove(file);
			FoundIn found = FoundPlaces.of(file);
			if (found.isEmpty()) {
				byFile.remove(file.getFullPath().toString());
			} else {
				byFile.put(file.getFullPath().toString(), found);
			}
		}
		onFound.accept(byFile.values().stream().sorted(Comparator.comparing(FoundIn::severity).reversed()).toList());
	}
}
