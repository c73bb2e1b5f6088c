package padwright.workbench.session;

import org.eclipse.core.filebuffers.IFileBuffer;
import org.eclipse.core.filebuffers.IFileBufferListener;
import org.eclipse.core.runtime.IPath;

/** Hears of all that happens to texts, and does nothing about it. */
public class BufferAdapter implements IFileBufferListener {

	@Override
	public void bufferCreated(IFileBuffer buffer) {
		// For subclasses.
	}

	@Override
	public void bufferDisposed(IFileBuffer buffer) {
		// For subclasses.
	}

	@Override
	public void bufferContentAboutToBeReplaced(IFileBuffer buffer) {
		// For subclasses.
	}

	@Override
	public void bufferContentReplaced(IFileBuffer buffer) {
		// For subclasses.
	}

	@Override
	public void stateChanging(IFileBuffer buffer) {
		// For subclasses.
	}

	@Override
	public void dirtyStateChanged(IFileBuffer buffer, boolean dirty) {
		// For subclasses.
	}

	@Override
	public void stateValidationChanged(IFileBuffer buffer, boolean validated) {
		// For subclasses.
	}

	@Override
	public void underlyingFileMoved(IFileBuffer buffer, IPath path) {
		// For subclasses.
	}

	@Override
	public void underlyingFileDeleted(IFileBuffer buffer) {
		// For subclasses.
	}

	@Override
	public void stateChangeFailed(IFileBuffer buffer) {
		// For subclasses.
	}
}
