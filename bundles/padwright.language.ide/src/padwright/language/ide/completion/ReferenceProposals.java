package padwright.language.ide.completion;

import java.util.List;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.xtext.CrossReference;
import org.eclipse.xtext.ide.editor.contentassist.ContentAssistContext;
import org.eclipse.xtext.ide.editor.contentassist.ContentAssistEntry;
import org.eclipse.xtext.ide.editor.contentassist.IdeCrossrefProposalProvider;
import org.eclipse.xtext.resource.IEObjectDescription;

import com.google.inject.Inject;

import padwright.language.ide.facts.Facts;
import padwright.model.keysystem.Titled;

/** Names that can be linked, each with its label and what is known about it. */
public final class ReferenceProposals extends IdeCrossrefProposalProvider {

	@Inject
	private WrittenNames written;

	@Override
	protected ContentAssistEntry createProposal(IEObjectDescription candidate, CrossReference reference,
			ContentAssistContext context) {
		return getProposalCreator().createProposal(written.of(candidate, reference), context, entry -> {
			entry.setSource(candidate);
			entry.setKind(ContentAssistEntry.KIND_REFERENCE);
			EObject element = EcoreUtil.resolve(candidate.getEObjectOrProxy(), context.getCurrentModel());
			entry.setDescription(element instanceof Titled titled ? titled.getLabel() : null);
			List<String> facts = Facts.of(element, context.getCurrentModel());
			entry.setDocumentation(facts.isEmpty() ? null : String.join("\n", facts));
		});
	}
}
