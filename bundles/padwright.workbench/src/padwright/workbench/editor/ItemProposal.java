package padwright.workbench.editor;

import org.eclipse.jface.text.BadLocationException;
import org.eclipse.jface.text.DocumentEvent;
import org.eclipse.jface.text.IDocument;
import org.eclipse.jface.text.IRegion;
import org.eclipse.jface.text.ITextViewer;
import org.eclipse.jface.text.TextUtilities;
import org.eclipse.jface.text.contentassist.ICompletionProposal;
import org.eclipse.jface.text.contentassist.ICompletionProposalExtension2;
import org.eclipse.jface.text.contentassist.ICompletionProposalExtension6;
import org.eclipse.jface.text.contentassist.IContextInformation;
import org.eclipse.jface.viewers.StyledString;
import org.eclipse.lsp4j.CompletionItem;
import org.eclipse.lsp4j.InsertTextFormat;
import org.eclipse.lsp4j.TextEdit;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.Point;

import padwright.language.ide.completion.SnippetText;
import padwright.workbench.session.Positions;

/** One offer of the server; it stays right while what it begins with is being typed. */
final class ItemProposal implements ICompletionProposal, ICompletionProposalExtension6,
		ICompletionProposalExtension2 {

	private final CompletionItem item;
	private final OfferList list;
	private final String text;
	private final int start;
	private final int replacedTo;
	private final int askedAt;
	private IRegion firstStop;

	private ItemProposal(CompletionItem item, OfferList list, String text, int start, int replacedTo, int askedAt) {
		this.item = item;
		this.list = list;
		this.text = text;
		this.start = start;
		this.replacedTo = replacedTo;
		this.askedAt = askedAt;
	}

	/** What an offer writes. */
	static String textOf(CompletionItem item) {
		if (item.getTextEdit() != null && item.getTextEdit().isLeft()) {
			return item.getTextEdit().getLeft().getNewText();
		}
		return item.getInsertText() == null ? item.getLabel() : item.getInsertText();
	}

	static ItemProposal of(CompletionItem item, IDocument document, int offset, OfferList list) {
		if (item.getTextEdit() != null && item.getTextEdit().isLeft()) {
			TextEdit edit = item.getTextEdit().getLeft();
			IRegion region = Positions.region(document, edit.getRange());
			return new ItemProposal(item, list, textOf(item), region.getOffset(),
					region.getOffset() + region.getLength(), offset);
		}
		return new ItemProposal(item, list, textOf(item), offset, offset, offset);
	}

	@Override
	public void apply(IDocument document) {
		replace(document, askedAt);
	}

	@Override
	public void apply(ITextViewer viewer, char trigger, int stateMask, int offset) {
		if (!isSnippet()) {
			replace(viewer.getDocument(), offset);
			return;
		}
		try {
			SnippetText snippet = SnippetText.of(text.replace("\n", lineBreak(viewer.getDocument())));
			replace(viewer.getDocument(), offset, snippet.text());
			firstStop = SnippetStops.enter(viewer, start, snippet);
		} catch (BadLocationException goneMeanwhile) {
			// Nothing is left to complete.
		}
	}

	private boolean isSnippet() {
		return item.getInsertTextFormat() == InsertTextFormat.Snippet;
	}

	/** The next line begins as the one where the snippet begins. */
	private String lineBreak(IDocument document) throws BadLocationException {
		int line = document.getLineInformationOfOffset(start).getOffset();
		String before = document.get(line, start - line);
		return TextUtilities.getDefaultLineDelimiter(document)
				+ before.substring(0, before.length() - before.stripLeading().length());
	}

	private void replace(IDocument document, int caret) {
		try {
			replace(document, caret, isSnippet() ? SnippetText.of(text).text() : text);
		} catch (BadLocationException goneMeanwhile) {
			// Nothing is left to complete.
		}
	}

	private void replace(IDocument document, int caret, String written) throws BadLocationException {
		document.replace(start, replacedTo - start + caret - askedAt, written);
	}

	@Override
	public boolean validate(IDocument document, int offset, DocumentEvent event) {
		try {
			if (offset < start || OfferList.growsTogether(document, start, text)) {
				return false;
			}
			String typed = document.get(start, offset - start);
			return !list.isDone(typed) && text.toLowerCase().startsWith(typed.toLowerCase());
		} catch (BadLocationException goneMeanwhile) {
			return false;
		}
	}

	@Override
	public void selected(ITextViewer viewer, boolean smartToggle) {
		// Nothing to prepare.
	}

	@Override
	public void unselected(ITextViewer viewer) {
		// Nothing to undo.
	}

	@Override
	public Point getSelection(IDocument document) {
		return firstStop == null ? new Point(start + text.length(), 0)
				: new Point(firstStop.getOffset(), firstStop.getLength());
	}

	@Override
	public String getDisplayString() {
		return getStyledDisplayString().getString();
	}

	@Override
	public StyledString getStyledDisplayString() {
		StyledString shown = new StyledString(item.getLabel());
		if (item.getDetail() != null && !item.getDetail().isEmpty()) {
			shown.append("  " + item.getDetail(), StyledString.QUALIFIER_STYLER);
		}
		return shown;
	}

	@Override
	public String getAdditionalProposalInfo() {
		if (item.getDocumentation() == null) {
			return null;
		}
		return item.getDocumentation().isLeft() ? item.getDocumentation().getLeft()
				: PlainText.of(item.getDocumentation().getRight().getValue());
	}

	@Override
	public Image getImage() {
		return null;
	}

	@Override
	public IContextInformation getContextInformation() {
		return null;
	}
}
