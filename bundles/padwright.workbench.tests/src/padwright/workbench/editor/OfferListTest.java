package padwright.workbench.editor;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Set;

import org.eclipse.jface.text.Document;
import org.eclipse.jface.text.IDocument;
import org.eclipse.lsp4j.CompletionItem;
import org.junit.jupiter.api.Test;

class OfferListTest {

	private static final Set<String> WORDS = Set.of("Shellac", "ShellacThin");

	private static ItemProposal offer(String word, IDocument document, boolean byItself) {
		return ItemProposal.of(new CompletionItem(word), document, "glue ".length(), new OfferList(WORDS, byItself));
	}

	@Test
	void aListThatCameByItselfGoesOnceAWordIsFinished() {
		IDocument document = new Document("glue Shellac");
		int end = document.getLength();
		assertTrue(offer("ShellacThin", document, true).validate(document, end - 1, null));
		assertFalse(offer("Shellac", document, true).validate(document, end, null));
		assertFalse(offer("ShellacThin", document, true).validate(document, end, null), "Return is meant for the text");
		assertTrue(offer("ShellacThin", document, false).validate(document, end, null), "it was asked for");
	}

	@Test
	void nothingGrowsTogetherWithAFinishedWord() {
		IDocument document = new Document("glue Shellac");
		CompletionItem key = new CompletionItem("key");
		assertFalse(ItemProposal.of(key, document, document.getLength(), new OfferList(Set.of("key"), false))
				.validate(document, document.getLength(), null));
	}
}
