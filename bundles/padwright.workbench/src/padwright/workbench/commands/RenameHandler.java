package padwright.workbench.commands;

import java.util.Optional;

import org.eclipse.jface.dialogs.InputDialog;
import org.eclipse.jface.text.BadLocationException;
import org.eclipse.jface.text.IDocument;
import org.eclipse.jface.text.IRegion;
import org.eclipse.jface.text.ITextSelection;
import org.eclipse.jface.window.Window;
import org.eclipse.lsp4j.Position;
import org.eclipse.lsp4j.PrepareRenameParams;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.ui.texteditor.ITextEditor;

import padwright.workbench.Messages;
import padwright.workbench.session.Answers;
import padwright.workbench.session.Positions;
import padwright.workbench.session.Renaming;
import padwright.workbench.session.StatusLine;

/** Renames what the caret is at, wherever it is used, in one step. */
public final class RenameHandler extends EditorHandler {

	@Override
	void execute(Shell shell, ITextEditor editor, IDocument text, ITextSelection selection) {
		Position place = Positions.position(text, selection.getOffset());
		Optional<String> old = Answers.of(text, (server, id) -> server.documents()
				.prepareRename(new PrepareRenameParams(id, place)).thenApply(answer -> answer == null ? null
						: word(text, Positions.region(text, answer.isFirst() ? answer.getFirst()
								: answer.getSecond().getRange()))));
		if (old.isEmpty()) {
			StatusLine.tell(Messages.get("rename.nothing"), true);
			return;
		}
		InputDialog dialog = new InputDialog(shell, Messages.get("rename.title", old.get()),
				Messages.get("rename.prompt"), old.get(), null);
		if (dialog.open() == Window.OK && !dialog.getValue().equals(old.get())) {
			Renaming.rename(text, place, old.get(), dialog.getValue());
		}
	}

	private static String word(IDocument text, IRegion region) {
		try {
			return text.get(region.getOffset(), region.getLength());
		} catch (BadLocationException goneMeanwhile) {
			return null;
		}
	}
}
