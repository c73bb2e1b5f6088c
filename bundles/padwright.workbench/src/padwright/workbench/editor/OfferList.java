package padwright.workbench.editor;

import java.util.Set;

import org.eclipse.jface.text.BadLocationException;
import org.eclipse.jface.text.IDocument;

/**
 * The words of one list of offers. A list that came up by itself goes once one of its words is typed to its end: Return
 * and the arrows are then meant for the text.
 */
record OfferList(Set<String> words, boolean byItself) {

	OfferList {
		words = Set.copyOf(words);
	}

	/** Whether the list has nothing more to say to who typed this. */
	boolean isDone(String typed) {
		return byItself && words.contains(typed);
	}

	/** Whether something offered at a place would grow together with the word that ends there. */
	static boolean growsTogether(IDocument document, int start, String offered) {
		try {
			return start > 0 && !offered.isEmpty() && Character.isLetterOrDigit(document.getChar(start - 1))
					&& Character.isLetterOrDigit(offered.charAt(0));
		} catch (BadLocationException goneMeanwhile) {
			return true;
		}
	}
}
