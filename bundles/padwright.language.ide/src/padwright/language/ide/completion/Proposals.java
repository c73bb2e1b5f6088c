package padwright.language.ide.completion;

import org.eclipse.xtext.Assignment;
import org.eclipse.xtext.CrossReference;
import org.eclipse.xtext.Keyword;
import org.eclipse.xtext.ide.editor.contentassist.ContentAssistContext;
import org.eclipse.xtext.ide.editor.contentassist.ContentAssistEntry;
import org.eclipse.xtext.ide.editor.contentassist.IIdeContentProposalAcceptor;
import org.eclipse.xtext.ide.editor.contentassist.IdeContentProposalProvider;
import org.eclipse.xtext.resource.IEObjectDescription;

import com.google.common.base.Predicate;
import com.google.inject.Inject;

import padwright.language.ide.words.TradeWords;

/**
 * What can be written at a place: values that the model knows first, then names, then words with their meaning,
 * then whole rows and documents to fill in.
 */
public final class Proposals extends IdeContentProposalProvider {

	/** Behind the words alone. */
	private static final int SNIPPET_PRIORITY = 100;

	@Inject
	private FittingReferences references;
	@Inject
	private SnippetNames snippetNames;

	@Override
	protected void _createProposals(Assignment place, ContentAssistContext context,
			IIdeContentProposalAcceptor acceptor) {
		if (place.getTerminal() instanceof CrossReference) {
			super._createProposals(place, context, acceptor);
			return;
		}
		if (Measures.isOne(place)) {
			Measures.withUnits(context.getPrefix())
					.forEach(measure -> accept(measure, ContentAssistEntry.KIND_VALUE, context, acceptor));
		}
		for (Offer offer : Offers.at(place, context)) {
			accept(offer, ContentAssistEntry.KIND_VALUE, context, acceptor);
		}
	}

	@Override
	protected void _createProposals(Keyword keyword, ContentAssistContext context,
			IIdeContentProposalAcceptor acceptor) {
		String word = keyword.getValue();
		if (Character.isLetter(word.charAt(0))) {
			ContentAssistEntry entry = entry(new Offer(word, null, TradeWords.meaning(word).orElse(null)),
					ContentAssistEntry.KIND_KEYWORD, context);
			acceptor.accept(entry, getProposalPriorities().getKeywordPriority(word, entry));
		}
		Snippets.at(keyword).forEach(snippet -> acceptor.accept(entry(snippet, context), SNIPPET_PRIORITY));
	}

	/** Whether it matches what is typed is told by its first word, which no stop stands in. */
	private ContentAssistEntry entry(Snippet snippet, ContentAssistContext context) {
		return getProposalCreator().createProposal(snippet.word(), context, ContentAssistEntry.KIND_SNIPPET, entry -> {
			String text = snippetNames.filled(snippet, context);
			entry.setProposal(text);
			entry.setLabel(snippet.label());
			entry.setDocumentation(SnippetText.of(text).text());
		});
	}

	@Override
	protected Predicate<IEObjectDescription> getCrossrefFilter(CrossReference reference,
			ContentAssistContext context) {
		return candidate -> references.fits(candidate, reference, context);
	}

	private void accept(Offer offer, String kind, ContentAssistContext context,
			IIdeContentProposalAcceptor acceptor) {
		ContentAssistEntry entry = entry(offer, kind, context);
		acceptor.accept(entry, getProposalPriorities().getDefaultPriority(entry));
	}

	private ContentAssistEntry entry(Offer offer, String kind, ContentAssistContext context) {
		return getProposalCreator().createProposal(offer.text(), context, kind, entry -> {
			entry.setDescription(offer.detail());
			entry.setDocumentation(offer.documentation());
		});
	}
}
