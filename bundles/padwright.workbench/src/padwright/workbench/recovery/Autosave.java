package padwright.workbench.recovery;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

import org.eclipse.core.filebuffers.FileBuffers;
import org.eclipse.core.filebuffers.IFileBuffer;
import org.eclipse.core.filebuffers.ITextFileBuffer;
import org.eclipse.core.runtime.ICoreRunnable;
import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.jface.text.IDocument;

import padwright.workbench.Messages;
import padwright.workbench.prefs.Preferences;
import padwright.workbench.safe.OnDisk;
import padwright.workbench.session.BufferAdapter;
import padwright.workbench.session.Stamps;

/** Keeps every unsaved text in its {@link Sidecar}, again and again while it changes. */
public final class Autosave extends BufferAdapter {

	private final Map<IFileBuffer, Long> kept = new ConcurrentHashMap<>();
	private final Job job = Job.createSystem(Messages.get("autosave.job"), (ICoreRunnable) monitor -> keepAll());

	public void start() {
		FileBuffers.getTextFileBufferManager().addFileBufferListener(this);
		job.schedule(interval());
	}

	public void stop() {
		job.cancel();
		FileBuffers.getTextFileBufferManager().removeFileBufferListener(this);
	}

	private static long interval() {
		return Preferences.autosaveInterval().toMillis();
	}

	private void keepAll() {
		for (IFileBuffer buffer : FileBuffers.getTextFileBufferManager().getFileBuffers()) {
			if (buffer.isDirty() && buffer instanceof ITextFileBuffer text) {
				OnDisk.path(buffer).ifPresent(path -> keep(text, path));
			}
		}
		job.schedule(interval());
	}

	private void keep(ITextFileBuffer buffer, Path path) {
		IDocument document = buffer.getDocument();
		long stamp = Stamps.of(document);
		if (Recovery.isOnOffer(path) || Long.valueOf(stamp).equals(kept.get(buffer))) {
			return;
		}
		try {
			Sidecar.of(path).keep(document.get());
			kept.put(buffer, stamp);
		} catch (IOException notKept) {
			ILog.of(Autosave.class).warn(Messages.get("autosave.failed", path.getFileName(), notKept.getMessage()));
		}
	}

	/** Saved or reverted: nothing is left to recover. */
	@Override
	public void dirtyStateChanged(IFileBuffer buffer, boolean dirty) {
		if (!dirty) {
			drop(buffer);
		}
	}

	/** Closed in order, whether saved or given up. */
	@Override
	public void bufferDisposed(IFileBuffer buffer) {
		drop(buffer);
	}

	private void drop(IFileBuffer buffer) {
		kept.remove(buffer);
		OnDisk.path(buffer).filter(path -> !Recovery.isOnOffer(path)).ifPresent(path -> {
			try {
				Sidecar.of(path).drop();
			} catch (IOException staysThere) {
				ILog.of(Autosave.class).warn(Messages.get("autosave.failed", path.getFileName(), staysThere.getMessage()));
			}
		});
	}
}
