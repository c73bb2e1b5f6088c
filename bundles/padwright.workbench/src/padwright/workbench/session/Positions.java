package padwright.workbench.session;

import org.eclipse.jface.text.BadLocationException;
import org.eclipse.jface.text.IDocument;
import org.eclipse.jface.text.IRegion;
import org.eclipse.jface.text.Region;
import org.eclipse.lsp4j.Position;
import org.eclipse.lsp4j.Range;

/** Between offsets in a text and the lines and columns of the protocol. A place that has gone is taken to its end. */
public final class Positions {

	private Positions() {
	}

	public static int offset(IDocument document, Position position) {
		try {
			if (position.getLine() >= document.getNumberOfLines()) {
				return document.getLength();
			}
			IRegion line = document.getLineInformation(position.getLine());
			return line.getOffset() + Math.min(position.getCharacter(), line.getLength());
		} catch (BadLocationException goneMeanwhile) {
			return document.getLength();
		}
	}

	public static IRegion region(IDocument document, Range range) {
		int start = offset(document, range.getStart());
		return new Region(start, Math.max(0, offset(document, range.getEnd()) - start));
	}

	public static Position position(IDocument document, int offset) {
		int within = Math.max(0, Math.min(offset, document.getLength()));
		try {
			int line = document.getLineOfOffset(within);
			return new Position(line, within - document.getLineOffset(line));
		} catch (BadLocationException goneMeanwhile) {
			return new Position(0, 0);
		}
	}

	public static Range range(IDocument document, int offset, int length) {
		return new Range(position(document, offset), position(document, offset + length));
	}
}
