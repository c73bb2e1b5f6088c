package padwright.workbench.safe;

import org.eclipse.core.filebuffers.FileBuffers;
import org.eclipse.core.filebuffers.ITextFileBuffer;
import org.eclipse.core.filebuffers.LocationKind;
import org.eclipse.core.resources.IFile;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.jface.text.IDocument;
import org.eclipse.ltk.core.refactoring.TextFileChange;

/** A change of a file as part of a larger one; a file that is not open is saved safely. */
public final class SafeTextChange extends TextFileChange {

	public SafeTextChange(String name, IFile file) {
		super(name, file);
	}

	@Override
	protected void commit(IDocument document, IProgressMonitor monitor) throws CoreException {
		ITextFileBuffer buffer = FileBuffers.getTextFileBufferManager().getTextFileBuffer(getFile().getFullPath(),
				LocationKind.IFILE);
		if (!needsSaving() || buffer == null || !SafeSave.save(buffer, false, monitor)) {
			super.commit(document, monitor);
		}
	}
}
