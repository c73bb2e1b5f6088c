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
import org.eclipse.lsp4j.RenameParams;
import org.eclipse.lsp4j.TextDocumentIdentifier;
import org.eclipse.lsp4j.WorkspaceEdit;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.ui.texteditor.ITextEditor;
import org.eclipse.xtext.nodemodel.INode;
import org.eclipse.xtext.nodemodel.util.NodeModelUtils;

import padwright.model.keysystem.KeySystemPackage;
import padwright.model.keysystem.Titled;
import padwright.workbench.Messages;
import padwright.workbench.session.Answers;
import padwright.workbench.session.Documents;
import padwright.workbench.session.LanguageSession;
import padwright.workbench.session.Positions;
import padwright.workbench.session.StatusLine;
import padwright.workbench.session.WorkspaceEdits;

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
			rename(text, place, old.get(), dialog.getValue());
		}
	}

	/** Renames something of a document, wherever it is used, as it was when it was read; tells whether it was done. */
	public static boolean rename(Titled thing, String anew) {
		String uri = thing.eResource().getURI().toString();
		INode name = NodeModelUtils.findNodesForFeature(thing, KeySystemPackage.Literals.TITLED__NAME).get(0);
		Optional<Position> place = Documents.file(uri)
				.map(file -> Documents.open(file).orElseGet(() -> WorkspaceEdits.onDisk(file)))
				.filter(text -> text.get().equals(name.getRootNode().getText()))
				.map(text -> Positions.position(text, name.getOffset()));
		return apply(place.flatMap(at -> LanguageSession.get().running().flatMap(server -> Answers.await(
				() -> server.documents().rename(new RenameParams(new TextDocumentIdentifier(uri), at, anew))))), thing.getName(), anew);
	}

	/** Renames without asking; tells whether it was done. */
	public static boolean rename(IDocument text, Position place, String old, String anew) {
		return apply(Answers.of(text, (server, id) -> server.documents().rename(new RenameParams(id, place, anew))), old,
				anew);
	}

	private static boolean apply(Optional<WorkspaceEdit> edit, String old, String anew) {
		boolean done = edit.isPresent() && WorkspaceEdits.apply(Messages.get("rename.title", old), edit.get());
		if (!done) {
			StatusLine.tell(Messages.get("rename.refused", old, anew), true);
		}
		return done;
	}

	private static String word(IDocument text, IRegion region) {
		try {
			return text.get(region.getOffset(), region.getLength());
		} catch (BadLocationException goneMeanwhile) {
			return null;
		}
	}
}
