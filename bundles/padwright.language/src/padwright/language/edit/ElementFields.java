package padwright.language.edit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.xtext.AbstractRule;
import org.eclipse.xtext.Action;
import org.eclipse.xtext.GrammarUtil;
import org.eclipse.xtext.RuleCall;
import org.eclipse.xtext.nodemodel.ICompositeNode;
import org.eclipse.xtext.nodemodel.INode;
import org.eclipse.xtext.nodemodel.util.NodeModelUtils;

import padwright.model.keysystem.KeySystem;
import padwright.model.keysystem.Titled;
import padwright.model.plan.Document;
import padwright.model.plan.Plan;
import padwright.model.stock.Stock;

/** The fields of an element: its attributes and those of its parts, each with its place in the text. */
public final class ElementFields {

	private static final String NAME = "name";

	private ElementFields() {
	}

	/** The element that a form at an offset is about: a row, an article, or else the system, stock or plan around. */
	public static Optional<EObject> elementAt(ICompositeNode document, int offset) {
		INode leaf = NodeModelUtils.findLeafNodeAtOffset(document, offset);
		EObject element = leaf == null ? null : NodeModelUtils.findActualSemanticObjectFor(leaf);
		while (element != null && element.eContainer() != null && !isBlock(element.eContainer())) {
			element = element.eContainer();
		}
		return Optional.ofNullable(element).filter(found -> !(found instanceof Document));
	}

	private static boolean isBlock(EObject element) {
		return element instanceof Document || element instanceof KeySystem || element instanceof Stock
				|| element instanceof Plan;
	}

	/**
	 * The fields of an element and of its single parts, in the order of the model; those that its grammar has no words for
	 * are left out.
	 */
	public static List<ElementField> of(EObject element) {
		List<ElementField> fields = new ArrayList<>();
		for (EAttribute attribute : element.eClass().getEAllAttributes()) {
			field(element, attribute).ifPresent(fields::add);
		}
		for (EReference reference : element.eClass().getEAllReferences()) {
			if (reference.isContainment() && !reference.isMany() && element.eGet(reference) instanceof EObject there) {
				fields.addAll(of(there));
			} else if (!reference.isContainer() && !(reference.isMany() && reference.isContainment() && isBlock(element))) {
				field(element, reference).ifPresent(fields::add);
			}
		}
		return fields;
	}

	/** The clauses of an element itself, its parts as one text each: for a change that says them of what is inherited. */
	public static List<ElementField> clauses(EObject element) {
		return element.eClass().getEAllStructuralFeatures().stream()
				.filter(feature -> !(feature.getName().equals(NAME) && isNamed(element)))
				.flatMap(feature -> ClauseText.of(element, feature)
						.map(clause -> new ElementField(element, feature, clause.text(), Optional.empty(),
								Optional.of(clause))).stream()).toList();
	}

	private static Optional<ElementField> field(EObject element, EStructuralFeature feature) {
		List<INode> nodes = NodeModelUtils.findNodesForFeature(element, feature);
		Optional<ClauseText> clause = ClauseText.of(element, feature);
		Optional<FieldPlace> place = feature.isMany() || feature.getName().equals(NAME) && isNamed(element)
				|| feature instanceof EReference ? Optional.empty() : place(element, (EAttribute) feature, nodes);
		String written = String.join(" ", nodes.stream().map(NodeModelUtils::getTokenText).toList());
		String text = place.isPresent() && !written.isEmpty() ? FieldText.of(element, place.get().rule()).typed(written)
				: clause.map(ClauseText::text).orElse(written);
		return nodes.isEmpty() && place.isEmpty() && clause.isEmpty() ? Optional.empty()
				: Optional.of(new ElementField(element, feature, text, place, clause));
	}

	/** Whether others refer to an element by its name, so that only renaming may change it. */
	private static boolean isNamed(EObject element) {
		return element instanceof Titled;
	}

	private static Optional<FieldPlace> place(EObject element, EAttribute attribute, List<INode> nodes) {
		ICompositeNode whole = NodeModelUtils.findActualNodeFor(element);
		Optional<AbstractRule> of = rule(whole);
		Optional<FieldGrammar> grammar = of.flatMap(rule -> FieldGrammar.of(rule, attribute.getName()));
		if (grammar.flatMap(FieldGrammar::valueRule).filter(FieldText::isFor).isEmpty()) {
			return Optional.empty();
		}
		if (nodes.isEmpty()) {
			return MissingField.place(whole, of.get(), grammar.get());
		}
		INode value = nodes.get(0);
		boolean holdsRemark = value.getText().strip().contains("//") && !value.getText().strip().startsWith("\"");
		return holdsRemark ? Optional.empty() : Optional.of(new FieldPlace(value.getOffset(), value.getLength(), "", "",
				grammar.get().valueRule().get()));
	}

	/** The rule that an element was read by. */
	static Optional<AbstractRule> rule(ICompositeNode node) {
		EObject grammar = node.getGrammarElement();
		return grammar instanceof RuleCall call ? Optional.of(call.getRule())
				: grammar instanceof Action made ? Optional.of(GrammarUtil.containingRule(made)) : Optional.empty();
	}
}
