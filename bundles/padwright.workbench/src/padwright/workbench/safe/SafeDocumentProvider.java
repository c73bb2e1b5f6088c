package padwright.workbench.safe;

import java.lang.reflect.InvocationTargetException;

import org.eclipse.core.resources.IFile;
import org.eclipse.core.resources.ResourcesPlugin;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.OperationCanceledException;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.jobs.ISchedulingRule;
import org.eclipse.jface.text.IDocument;
import org.eclipse.ui.IFileEditorInput;
import org.eclipse.ui.editors.text.TextFileDocumentProvider;

/**
 * Gives editors their texts, and saves them safely. A text of a file that is marked as read-only can be written in; whether
 * the mark is meant is asked once, when it is saved, however it was changed.
 */
public final class SafeDocumentProvider extends TextFileDocumentProvider {

	@Override
	public boolean isReadOnly(Object element) {
		return false;
	}

	@Override
	public boolean isModifiable(Object element) {
		return true;
	}

	@Override
	public boolean isStateValidated(Object element) {
		return true;
	}

	@Override
	public void validateState(Object element, Object shell) {
		// Saving asks.
	}

	@Override
	protected void commitFileBuffer(IProgressMonitor monitor, FileInfo info, boolean overwrite) throws CoreException {
		if (!SafeSave.save(info.fTextFileBuffer, overwrite, monitor)) {
			super.commitFileBuffer(monitor, info, overwrite);
		}
	}

	@Override
	protected DocumentProviderOperation createSaveOperation(Object element, IDocument document, boolean overwrite)
			throws CoreException {
		DocumentProviderOperation save = super.createSaveOperation(element, document, overwrite);
		return save != null && element instanceof IFileEditorInput input
				? new SaveBesideOthers(save, input.getFile()) : save;
	}

	/** Holds the folder while saving, since a backup appears beside the file. */
	private static final class SaveBesideOthers extends DocumentProviderOperation {

		private final DocumentProviderOperation save;
		private final IFile file;

		SaveBesideOthers(DocumentProviderOperation save, IFile file) {
			this.save = save;
			this.file = file;
		}

		@Override
		protected void execute(IProgressMonitor monitor) throws CoreException {
			try {
				save.run(monitor);
			} catch (InvocationTargetException failed) {
				throw failed.getCause() instanceof CoreException known ? known
						: new CoreException(Status.error(file.getName(), failed.getCause()));
			} catch (InterruptedException cancelled) {
				throw new OperationCanceledException();
			}
		}

		@Override
		public ISchedulingRule getSchedulingRule() {
			return ResourcesPlugin.getWorkspace().getRuleFactory().refreshRule(file);
		}
	}
}
