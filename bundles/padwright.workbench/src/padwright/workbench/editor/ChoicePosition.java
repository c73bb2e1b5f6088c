package padwright.workbench.editor;

import java.util.List;

import org.eclipse.jface.text.IDocument;
import org.eclipse.jface.text.contentassist.ICompletionProposal;
import org.eclipse.jface.text.link.ProposalPosition;

/** A stop of a snippet that offers words to choose from. */
final class ChoicePosition extends ProposalPosition {

	private final List<String> words;

	ChoicePosition(IDocument document, int offset, int length, int turn, List<String> words) {
		super(document, offset, length, turn, null);
		this.words = words;
	}

	@Override
	public ICompletionProposal[] getChoices() {
		return words.stream().map(word -> new StopChoice(this, word)).toArray(ICompletionProposal[]::new);
	}

	@Override
	public boolean equals(Object other) {
		return other instanceof ChoicePosition position && words.equals(position.words) && super.equals(other);
	}

	@Override
	public int hashCode() {
		return super.hashCode();
	}
}
