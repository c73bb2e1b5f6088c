package padwright.workbench.editor;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.eclipse.jface.text.BadLocationException;
import org.eclipse.jface.text.DocumentEvent;
import org.eclipse.jface.text.IDocument;

/**
 * A stretch of text of one kind.
 *
 * @param kind one of the protocol's kinds of token
 */
record ColouredWord(int offset, int length, String kind) {

	private static final int NUMBERS_A_WORD = 5;

	int end() {
		return offset + length;
	}

	/** The word when a change has been made elsewhere; nothing where the change is in the word itself. */
	Optional<ColouredWord> after(DocumentEvent change) {
		if (end() <= change.getOffset()) {
			return Optional.of(this);
		}
		int changedTo = change.getOffset() + change.getLength();
		return offset < changedTo ? Optional.empty()
				: Optional.of(new ColouredWord(offset + change.getText().length() - change.getLength(), length, kind));
	}

	/** Reads tokens as the protocol packs them: each by its distance from the one before. */
	static List<ColouredWord> all(List<Integer> packed, List<String> kinds, IDocument text) {
		List<ColouredWord> words = new ArrayList<>();
		int line = 0;
		int column = 0;
		for (int at = 0; at + NUMBERS_A_WORD <= packed.size(); at += NUMBERS_A_WORD) {
			int down = packed.get(at);
			line += down;
			column = down == 0 ? column + packed.get(at + 1) : packed.get(at + 1);
			try {
				words.add(new ColouredWord(text.getLineOffset(line) + column, packed.get(at + 2),
						kinds.get(packed.get(at + 3))));
			} catch (BadLocationException textIsShorterByNow) {
				return words;
			}
		}
		return words;
	}
}
