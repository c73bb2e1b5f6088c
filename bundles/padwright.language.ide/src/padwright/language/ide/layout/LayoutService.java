package padwright.language.ide.layout;

import java.util.List;

import org.eclipse.lsp4j.FormattingOptions;
import org.eclipse.lsp4j.Position;
import org.eclipse.lsp4j.Range;
import org.eclipse.lsp4j.TextEdit;
import org.eclipse.xtext.ide.server.Document;
import org.eclipse.xtext.ide.server.formatting.FormattingService;
import org.eclipse.xtext.resource.XtextResource;
import org.eclipse.xtext.util.ITextRegion;

/**
 * Lays out a document or a part of it just as the command line does: the editor's own ideas of tabs do not count, and
 * text that cannot be read is left alone. The blanks before a part belong to it, since the indent is among them.
 */
public final class LayoutService extends FormattingService {

	@Override
	public List<TextEdit> format(XtextResource resource, Document document, int offset, int length,
			FormattingOptions options) {
		if (resource.getParseResult().hasSyntaxErrors()) {
			return List.of();
		}
		int start = document.getContents().substring(0, offset).stripTrailing().length();
		return super.format(resource, document, start, offset + length - start, null);
	}

	/** Lays out the line that was ended by what was typed at {@code position}: a line end, or the end of a block. */
	public List<TextEdit> formatTyped(XtextResource resource, Document document, Position position, String typed) {
		int line = typed.equals("\n") ? position.getLine() - 1 : position.getLine();
		if (line < 0) {
			return List.of();
		}
		String[] lines = document.getContents().split("\n", -1);
		Range range = new Range(new Position(line, 0), new Position(line, lines[line].length()));
		ITextRegion region = document.getTextRegion(range);
		return format(resource, document, region.getOffset(), region.getLength(), null);
	}
}
