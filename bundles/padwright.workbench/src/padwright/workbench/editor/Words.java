package padwright.workbench.editor;

import org.eclipse.jface.text.BadLocationException;
import org.eclipse.jface.text.IDocument;
import org.eclipse.jface.text.IRegion;
import org.eclipse.jface.text.Region;

/** The words of a text as a reader sees them. */
final class Words {

	private Words() {
	}

	/** The word around an offset; empty where there is none. */
	static IRegion at(IDocument document, int offset) {
		try {
			int start = offset;
			while (start > 0 && Character.isJavaIdentifierPart(document.getChar(start - 1))) {
				start--;
			}
			int end = offset;
			while (end < document.getLength() && Character.isJavaIdentifierPart(document.getChar(end))) {
				end++;
			}
			return new Region(start, end - start);
		} catch (BadLocationException goneMeanwhile) {
			return new Region(offset, 0);
		}
	}
}
