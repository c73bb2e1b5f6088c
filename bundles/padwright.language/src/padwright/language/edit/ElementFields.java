package padwright.language.edit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
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

	/** The fields of an element and of its single parts, in the order of the model. */
	public static List<ElementField> of(EObject element) {
		List<ElementField> fields = new ArrayList<>();
		for (EAttribute attribute : element.eClass().getEAllAttributes()) {
			fields.add(field(element, attribute));
		}
		for (EReference part : element.eClass().getEAllContainments()) {
			if (!part.isMany() && element.eGet(part) instanceof EObject there) {
				fields.addAll(of(there));
			}
		}
		return fields;
	}

	private static ElementField field(EObject element, EAttribute attribute) {
		List<INode> nodes = NodeModelUtils.findNodesForFeature(element, attribute);
		Optional<FieldPlace> place = attribute.isMany() || attribute.getName().equals(NAME) && isNamed(element)
				? Optional.empty() : place(element, attribute, nodes);
		String written = String.join(" ", nodes.stream().map(NodeModelUtils::getTokenText).toList());
		String text = place.isPresent() && !written.isEmpty()
				? FieldText.of(element, place.get().rule()).typed(written) : written;
		return new ElementField(element, attribute, text, place);
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
