package padwright.language.ide.actions;

import java.util.List;
import java.util.Map;

import org.eclipse.lsp4j.Range;
import org.eclipse.lsp4j.TextEdit;
import org.eclipse.lsp4j.WorkspaceEdit;
import org.eclipse.xtext.ide.server.Document;

/** Edits of our own as the protocol writes them. */
final class Edits {

	private Edits() {
	}

	static WorkspaceEdit of(List<padwright.language.edit.TextEdit> edits, String uri, Document document) {
		return new WorkspaceEdit(Map.of(uri, edits.stream().map(edit -> of(edit, document)).toList()));
	}

	private static TextEdit of(padwright.language.edit.TextEdit edit, Document document) {
		return new TextEdit(new Range(document.getPosition(edit.offset()),
				document.getPosition(edit.offset() + edit.length())), edit.text());
	}
}
