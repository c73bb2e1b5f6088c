package padwright.workbench.editor;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

import org.eclipse.jface.text.ITextViewer;
import org.eclipse.jface.text.IDocument;
import org.eclipse.jface.text.contentassist.ICompletionProposal;
import org.eclipse.jface.text.contentassist.IContentAssistProcessor;
import org.eclipse.jface.text.contentassist.IContextInformation;
import org.eclipse.jface.text.contentassist.IContextInformationValidator;
import org.eclipse.lsp4j.CompletionItem;
import org.eclipse.lsp4j.CompletionList;
import org.eclipse.lsp4j.CompletionParams;
import org.eclipse.lsp4j.jsonrpc.messages.Either;

import padwright.workbench.session.Answers;
import padwright.workbench.session.Positions;

/** Offers what can stand at the caret. */
public final class Completion implements IContentAssistProcessor {

	private static final ICompletionProposal[] NONE = {};

	@Override
	public ICompletionProposal[] computeCompletionProposals(ITextViewer viewer, int offset) {
		IDocument document = viewer.getDocument();
		Optional<Either<List<CompletionItem>, CompletionList>> answer = Answers.of(document,
				(server, text) -> server.documents()
						.completion(new CompletionParams(text, Positions.position(document, offset))));
		return answer.map(found -> found.isLeft() ? found.getLeft() : found.getRight().getItems())
				.map(items -> offers(items, viewer, offset)).orElse(NONE);
	}

	private static ICompletionProposal[] offers(List<CompletionItem> items, ITextViewer viewer, int offset) {
		IDocument document = viewer.getDocument();
		OfferList list = new OfferList(items.stream().map(ItemProposal::textOf).collect(Collectors.toSet()),
				ListsByThemselves.isOne(viewer));
		return items.stream().sorted(Comparator.comparing(Completion::rank))
				.map(item -> ItemProposal.of(item, document, offset, list))
				.filter(offer -> offer.validate(document, offset, null)).toArray(ICompletionProposal[]::new);
	}

	private static String rank(CompletionItem item) {
		return item.getSortText() == null ? item.getLabel() : item.getSortText();
	}

	@Override
	public IContextInformation[] computeContextInformation(ITextViewer viewer, int offset) {
		return null;
	}

	@Override
	public char[] getCompletionProposalAutoActivationCharacters() {
		return null;
	}

	@Override
	public char[] getContextInformationAutoActivationCharacters() {
		return null;
	}

	@Override
	public String getErrorMessage() {
		return null;
	}

	@Override
	public IContextInformationValidator getContextInformationValidator() {
		return null;
	}
}
