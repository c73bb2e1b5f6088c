package padwright.workbench.session;

import java.util.Optional;

import org.eclipse.jface.text.IDocument;
import org.eclipse.lsp4j.Position;
import org.eclipse.lsp4j.RenameParams;
import org.eclipse.lsp4j.TextDocumentIdentifier;
import org.eclipse.lsp4j.WorkspaceEdit;
import org.eclipse.xtext.nodemodel.INode;
import org.eclipse.xtext.nodemodel.util.NodeModelUtils;

import padwright.model.keysystem.KeySystemPackage;
import padwright.model.keysystem.Titled;
import padwright.workbench.Messages;

/** Gives a thing of a document another name, wherever it is used, in one step. */
public final class Renaming {

	private Renaming() {
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
}
