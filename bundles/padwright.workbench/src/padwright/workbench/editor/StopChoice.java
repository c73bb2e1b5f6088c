package padwright.workbench.editor;

import org.eclipse.jface.text.BadLocationException;
import org.eclipse.jface.text.IDocument;
import org.eclipse.jface.text.Position;
import org.eclipse.jface.text.contentassist.ICompletionProposal;
import org.eclipse.jface.text.contentassist.IContextInformation;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.Point;

/** One of the words that can stand in a stop of a snippet, wherever the stop is by now. */
record StopChoice(Position stop, String word) implements ICompletionProposal {

	@Override
	public void apply(IDocument document) {
		try {
			document.replace(stop.getOffset(), stop.getLength(), word);
		} catch (BadLocationException goneMeanwhile) {
			// The stop is no more.
		}
	}

	@Override
	public Point getSelection(IDocument document) {
		return new Point(stop.getOffset() + stop.getLength(), 0);
	}

	@Override
	public String getDisplayString() {
		return word;
	}

	@Override
	public String getAdditionalProposalInfo() {
		return null;
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
