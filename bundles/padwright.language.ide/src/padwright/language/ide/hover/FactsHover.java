package padwright.language.ide.hover;

import java.util.ArrayList;
import java.util.List;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.lsp4j.Hover;
import org.eclipse.lsp4j.HoverParams;
import org.eclipse.lsp4j.MarkupContent;
import org.eclipse.lsp4j.MarkupKind;
import org.eclipse.lsp4j.Range;
import org.eclipse.xtext.EnumLiteralDeclaration;
import org.eclipse.xtext.Keyword;
import org.eclipse.xtext.ide.server.Document;
import org.eclipse.xtext.ide.server.hover.IHoverService;
import org.eclipse.xtext.nodemodel.ILeafNode;
import org.eclipse.xtext.nodemodel.util.NodeModelUtils;
import org.eclipse.xtext.resource.EObjectAtOffsetHelper;
import org.eclipse.xtext.resource.XtextResource;
import org.eclipse.xtext.util.CancelIndicator;

import com.google.inject.Inject;

import padwright.language.ide.facts.Facts;
import padwright.language.ide.facts.Hazards;
import padwright.language.ide.words.TradeWords;
import padwright.workup.cautions.HazardStatements;

/** Tells of the word under the pointer what it means and what is known about what it names. */
public final class FactsHover implements IHoverService {

	@Inject
	private EObjectAtOffsetHelper elements;

	@Override
	public Hover hover(Document document, XtextResource resource, HoverParams params, CancelIndicator cancelled) {
		int offset = document.getOffSet(params.getPosition());
		ILeafNode word = NodeModelUtils.findLeafNodeAtOffset(resource.getParseResult().getRootNode(), offset);
		if (word == null || word.isHidden()) {
			return null;
		}
		List<String> lines = lines(resource, offset, word);
		return lines.isEmpty() ? null : new Hover(new MarkupContent(MarkupKind.MARKDOWN, String.join("\n\n", lines)),
				new Range(document.getPosition(word.getOffset()), document.getPosition(word.getEndOffset())));
	}

	private List<String> lines(XtextResource resource, int offset, ILeafNode word) {
		EObject target = elements.resolveCrossReferencedElementAt(resource, offset);
		EObject context = NodeModelUtils.findActualSemanticObjectFor(word);
		if (target != null) {
			return target.eIsProxy() ? List.of() : Facts.of(target, context);
		}
		if (HazardStatements.isWellFormed(word.getText())) {
			return List.of(Hazards.worded(word.getText()));
		}
		List<String> lines = new ArrayList<>();
		if (isKeyword(word.getGrammarElement())) {
			TradeWords.meaning(word.getText()).map(meaning -> "**" + word.getText() + "**: " + meaning)
					.ifPresent(lines::add);
		}
		lines.addAll(Facts.of(context));
		return lines;
	}

	private static boolean isKeyword(EObject grammar) {
		return grammar instanceof Keyword || grammar instanceof EnumLiteralDeclaration;
	}
}
