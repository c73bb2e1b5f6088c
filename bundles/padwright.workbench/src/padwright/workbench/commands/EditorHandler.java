package padwright.workbench.commands;

import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.jface.text.IDocument;
import org.eclipse.jface.text.ITextSelection;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.ui.handlers.HandlerUtil;
import org.eclipse.ui.texteditor.ITextEditor;

/** Something that is done to the text of the active editor. */
abstract class EditorHandler extends AbstractHandler {

	@Override
	public final Object execute(ExecutionEvent event) {
		if (HandlerUtil.getActiveEditor(event) instanceof ITextEditor editor
				&& editor.getSelectionProvider().getSelection() instanceof ITextSelection selection) {
			execute(HandlerUtil.getActiveShell(event), editor,
					editor.getDocumentProvider().getDocument(editor.getEditorInput()), selection);
		}
		return null;
	}

	abstract void execute(Shell shell, ITextEditor editor, IDocument text, ITextSelection selection);
}
