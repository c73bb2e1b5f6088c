package padwright.workbench.editor;

import java.util.Optional;

import org.eclipse.core.resources.IFile;
import org.eclipse.core.runtime.ILog;
import org.eclipse.jface.text.IRegion;
import org.eclipse.lsp4j.Location;
import org.eclipse.lsp4j.Range;
import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.ide.IDE;
import org.eclipse.ui.texteditor.ITextEditor;

import padwright.workbench.session.Documents;
import padwright.workbench.session.Positions;

/** Goes to places in documents. */
public final class Places {

	private Places() {
	}

	/** Opens the document of a place and selects it. */
	public static void open(Location place) {
		Documents.file(place.getUri()).flatMap(Places::editor).ifPresent(editor -> reveal(editor, place.getRange()));
	}

	/** The editor of a file, opened if it is not; nothing if it cannot be. */
	public static Optional<ITextEditor> editor(IFile file) {
		return editor(file, true);
	}

	/** As {@link #editor}, but whatever is worked in stays so. */
	public static Optional<ITextEditor> show(IFile file) {
		return editor(file, false);
	}

	private static Optional<ITextEditor> editor(IFile file, boolean activate) {
		IWorkbenchPage page = PlatformUI.getWorkbench().getActiveWorkbenchWindow().getActivePage();
		try {
			IEditorPart editor = IDE.openEditor(page, file, activate);
			return editor instanceof ITextEditor text ? Optional.of(text) : Optional.empty();
		} catch (PartInitException unopened) {
			ILog.of(Places.class).log(unopened.getStatus());
			return Optional.empty();
		}
	}

	/** Selects a range in an open editor. */
	public static void reveal(ITextEditor editor, Range range) {
		IRegion region = Positions.region(editor.getDocumentProvider().getDocument(editor.getEditorInput()), range);
		editor.selectAndReveal(region.getOffset(), region.getLength());
	}
}
