package padwright.workbench.editor;

import java.util.List;
import java.util.stream.Stream;

import org.eclipse.jface.text.IDocument;
import org.eclipse.jface.text.contentassist.ICompletionProposal;
import org.eclipse.jface.text.contentassist.IContextInformation;
import org.eclipse.jface.text.quickassist.IQuickAssistInvocationContext;
import org.eclipse.jface.text.quickassist.IQuickAssistProcessor;
import org.eclipse.jface.text.source.Annotation;
import org.eclipse.lsp4j.CodeAction;
import org.eclipse.lsp4j.CodeActionContext;
import org.eclipse.lsp4j.CodeActionKind;
import org.eclipse.lsp4j.CodeActionParams;
import org.eclipse.lsp4j.Command;
import org.eclipse.lsp4j.jsonrpc.messages.Either;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.Point;

import padwright.workbench.session.Answers;
import padwright.workbench.session.Positions;

/**
 * Offers the cures of all findings on the line of the caret, and work that can be done there, such as to solve the key.
 * Those of a finding at the caret itself are offered by the platform.
 */
public final class QuickAssist implements IQuickAssistProcessor {

	@Override
	public ICompletionProposal[] computeQuickAssistProposals(IQuickAssistInvocationContext context) {
		IDocument document = context.getSourceViewer().getDocument();
		CodeActionContext wanted = new CodeActionContext(List.of(), List.of(CodeActionKind.RefactorRewrite));
		List<Either<Command, CodeAction>> actions = Answers.of(document, (server, text) -> server.documents()
				.codeAction(new CodeActionParams(text, Positions.range(document, context.getOffset(), 0), wanted)))
				.orElse(List.of());
		return Stream.concat(LineCures.at(document, context.getOffset()).stream(),
				actions.stream().filter(Either::isRight).map(action -> new Work(action.getRight())))
				.toArray(ICompletionProposal[]::new);
	}

	@Override
	public String getErrorMessage() {
		return null;
	}

	/** Markers have their cures from {@link Fixes}. */
	@Override
	public boolean canFix(Annotation annotation) {
		return false;
	}

	@Override
	public boolean canAssist(IQuickAssistInvocationContext context) {
		return true;
	}

	/** Something that can be done. */
	record Work(CodeAction action) implements ICompletionProposal {

		@Override
		public void apply(IDocument document) {
			Actions.run(action);
		}

		@Override
		public Point getSelection(IDocument document) {
			return null;
		}

		@Override
		public String getAdditionalProposalInfo() {
			return null;
		}

		@Override
		public String getDisplayString() {
			return action.getTitle();
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
}
