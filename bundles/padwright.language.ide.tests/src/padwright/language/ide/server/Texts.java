package padwright.language.ide.server;

import java.util.Comparator;
import java.util.List;

import org.eclipse.lsp4j.Position;
import org.eclipse.lsp4j.Range;
import org.eclipse.lsp4j.TextEdit;
import org.eclipse.lsp4j.WorkspaceEdit;
import org.eclipse.xtext.ide.server.Document;

/** Places in a text, and edits of it, as an editor handles them. */
final class Texts {

	private Texts() {
	}

	/** Where {@code snippet}, which the text holds, begins for the first time. */
	static Position start(String text, String snippet) {
		return new Document(1, text).getPosition(offset(text, snippet));
	}

	/** Just behind {@code snippet}, which the text holds, for the first time. */
	static Position end(String text, String snippet) {
		return new Document(1, text).getPosition(offset(text, snippet) + snippet.length());
	}

	private static int offset(String text, String snippet) {
		int offset = text.indexOf(snippet);
		if (offset < 0) {
			throw new IllegalArgumentException("no \"" + snippet + "\" in " + text);
		}
		return offset;
	}

	static String in(Range range, String text) {
		return new Document(1, text).getSubstring(range);
	}

	static String apply(List<? extends TextEdit> edits, String text) {
		Document document = new Document(1, text);
		StringBuilder edited = new StringBuilder(text);
		Comparator<TextEdit> byStart = Comparator.comparing(edit -> document.getOffSet(edit.getRange().getStart()));
		edits.stream().sorted(byStart.reversed()).forEach(edit -> edited.replace(
				document.getOffSet(edit.getRange().getStart()), document.getOffSet(edit.getRange().getEnd()),
				edit.getNewText()));
		return edited.toString();
	}

	/** The part of an edit that is for one file, in either form that the protocol allows. */
	static List<TextEdit> of(WorkspaceEdit edit, String uri) {
		if (edit.getDocumentChanges() != null) {
			return edit.getDocumentChanges().stream().map(change -> change.getLeft())
					.filter(change -> change.getTextDocument().getUri().equals(uri))
					.flatMap(change -> change.getEdits().stream()).map(either -> either.getLeft()).toList();
		}
		return edit.getChanges().getOrDefault(uri, List.of());
	}
}
