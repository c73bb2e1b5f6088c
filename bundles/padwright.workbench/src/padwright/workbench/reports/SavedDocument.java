package padwright.workbench.reports;

import java.nio.file.Path;
import java.util.Optional;

import org.eclipse.core.resources.IFile;
import org.eclipse.ui.IWorkbenchPage;

import padwright.workbench.Messages;
import padwright.workbench.editor.PlanEditor;
import padwright.workbench.safe.OnDisk;
import padwright.workbench.session.StatusLine;

/** The document in the editor as a file that commands can read: the user may save it first. */
final class SavedDocument {

	private SavedDocument() {
	}

	/** Nothing if no document is open, or the user will not save it; the user is told. */
	static Optional<Path> in(IWorkbenchPage page) {
		Optional<Path> file = page.getActiveEditor() instanceof PlanEditor editor && saved(editor, page)
				? OnDisk.path(editor.getEditorInput().getAdapter(IFile.class)) : Optional.empty();
		if (file.isEmpty()) {
			StatusLine.tell(Messages.get("papers.noPlan"), true);
		}
		return file;
	}

	private static boolean saved(PlanEditor editor, IWorkbenchPage page) {
		return !editor.isDirty() || page.saveEditor(editor, true) && !editor.isDirty();
	}
}
