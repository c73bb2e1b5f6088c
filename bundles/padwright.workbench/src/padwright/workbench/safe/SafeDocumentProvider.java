package padwright.workbench.safe;

import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.ui.editors.text.TextFileDocumentProvider;

/** Gives editors their texts, and saves them safely. */
public final class SafeDocumentProvider extends TextFileDocumentProvider {

	@Override
	protected void commitFileBuffer(IProgressMonitor monitor, FileInfo info, boolean overwrite) throws CoreException {
		if (!SafeSave.save(info.fTextFileBuffer, overwrite, monitor)) {
			super.commitFileBuffer(monitor, info, overwrite);
		}
	}
}
