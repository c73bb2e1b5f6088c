package padwright.workbench.session;

import java.util.List;

import org.eclipse.core.runtime.ILog;
import org.eclipse.jface.text.BadLocationException;
import org.eclipse.jface.text.IDocument;
import org.eclipse.lsp4j.TextEdit;
import org.eclipse.text.edits.MalformedTreeException;
import org.eclipse.text.edits.MultiTextEdit;
import org.eclipse.text.edits.ReplaceEdit;
import org.eclipse.text.undo.DocumentUndoManagerRegistry;
import org.eclipse.text.undo.IDocumentUndoManager;

/** Changes an open text in one step that can be undone. */
public final class TextEdits {

	private TextEdits() {
	}

	/** Applies what the server said of this very text. */
	public static boolean apply(List<TextEdit> edits, IDocument text) {
		return apply(WorkspaceEdits.edit(edits, text), text);
	}

	/** Applies edits that were made from this very text. */
	public static boolean applyOwn(List<padwright.language.edit.TextEdit> edits, IDocument text) {
		MultiTextEdit all = new MultiTextEdit();
		edits.forEach(edit -> all.addChild(new ReplaceEdit(edit.offset(), edit.length(), edit.text())));
		return apply(all, text);
	}

	private static boolean apply(MultiTextEdit edit, IDocument text) {
		IDocumentUndoManager undo = DocumentUndoManagerRegistry.getDocumentUndoManager(text);
		if (undo != null) {
			undo.beginCompoundChange();
		}
		try {
			edit.apply(text);
			return true;
		} catch (MalformedTreeException | BadLocationException notOfThisText) {
			ILog.of(TextEdits.class).error("an edit does not go with its text", notOfThisText);
			return false;
		} finally {
			if (undo != null) {
				undo.endCompoundChange();
			}
		}
	}
}
