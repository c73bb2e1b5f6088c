package padwright.language.ide.server;

import org.eclipse.lsp4j.CompletionItem;
import org.eclipse.lsp4j.CompletionItemKind;
import org.eclipse.lsp4j.InsertTextFormat;
import org.eclipse.lsp4j.InsertTextMode;
import org.eclipse.lsp4j.Position;
import org.eclipse.lsp4j.TextEdit;
import org.eclipse.xtext.ide.server.Document;

import padwright.language.ide.completion.SnippetText;

/** Offered snippets in the form that a client can insert. */
record SnippetItems(ClientAbilities client) {

	void adapt(Iterable<CompletionItem> items, Document document, Position caret) {
		for (CompletionItem item : items) {
			if (item.getKind() == CompletionItemKind.Snippet) {
				adapt(item, document, caret);
			}
		}
	}

	/** Clients that know snippets indent them themselves. */
	private void adapt(CompletionItem item, Document document, Position caret) {
		if (client.snippets()) {
			item.setInsertTextMode(client.indents() ? InsertTextMode.AdjustIndentation : null);
			return;
		}
		TextEdit edit = item.getTextEdit().getLeft();
		edit.setNewText(SnippetText.of(edit.getNewText()).text().replace("\n", "\n" + indent(document, caret)));
		item.setInsertTextFormat(InsertTextFormat.PlainText);
	}

	private static String indent(Document document, Position caret) {
		int end = document.getOffSet(caret);
		int start = document.getContents().lastIndexOf('\n', end - 1) + 1;
		String line = document.getContents().substring(start, end);
		return line.substring(0, line.length() - line.stripLeading().length());
	}
}
