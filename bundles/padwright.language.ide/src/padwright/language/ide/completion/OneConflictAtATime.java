package padwright.language.ide.completion;

import org.eclipse.xtext.ide.editor.contentassist.ContentAssistContext;
import org.eclipse.xtext.ide.editor.contentassist.antlr.AntlrProposalConflictHelper;

/**
 * Tells whether a proposal would grow together with the word before it. The server completes in several threads
 * with one such helper, and its three lexers hold the text they are at: only one thread may have them at a time.
 */
public class OneConflictAtATime extends AntlrProposalConflictHelper {

	@Override
	public synchronized boolean existsConflict(String lastCompleteText, String proposal,
			ContentAssistContext context) {
		return growsTogether(lastCompleteText, proposal)
				|| super.existsConflict(lastCompleteText, proposal, context);
	}

	/** The lexers part a word from a number before it, but nobody who reads does. */
	private static boolean growsTogether(String lastCompleteText, String proposal) {
		return !lastCompleteText.isEmpty() && !proposal.isEmpty()
				&& Character.isLetterOrDigit(lastCompleteText.codePointBefore(lastCompleteText.length()))
				&& Character.isLetterOrDigit(proposal.codePointAt(0));
	}
}
