package padwright.language.edit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EEnum;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.xtext.AbstractRule;
import org.eclipse.xtext.Action;
import org.eclipse.xtext.Assignment;
import org.eclipse.xtext.GrammarUtil;
import org.eclipse.xtext.RuleCall;
import org.eclipse.xtext.nodemodel.ICompositeNode;
import org.eclipse.xtext.nodemodel.INode;
import org.eclipse.xtext.nodemodel.util.NodeModelUtils;

import padwright.model.keysystem.KeySystem;
import padwright.model.keysystem.Titled;
import padwright.model.plan.Document;
import padwright.model.plan.Job;
import padwright.model.plan.Plan;
import padwright.model.stock.Stock;
import padwright.model.stock.StockPackage;

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
				|| element instanceof Plan || element instanceof Job;
	}

	/**
	 * The fields of an element and of its single parts, in the order of the model; those that its grammar has no words for
	 * are left out. Of a part that is missing there is the reference or word that it begins with, since to choose that makes
	 * the part, or else the part as one text. The condition of a rule is one text too.
	 */
	public static List<ElementField> of(EObject element) {
		return of(element, false);
	}

	/** As {@link #of}, with what it is known by in its list, in the order of its grammar. */
	static List<ElementField> ofPart(EObject part) {
		List<String> order = rule(part).stream()
				.flatMap(rule -> GrammarUtil.containedAssignments(rule).stream()).map(Assignment::getFeature).toList();
		List<ElementField> fields = new ArrayList<>(of(part, true));
		fields.sort(Comparator.comparingInt(field -> order.indexOf(clause(part, field))));
		return fields;
	}

	/** The feature of an element whose clause says a field: its own, or that of the part, there or not yet, that has it. */
	static String clause(EObject element, ElementField field) {
		EObject part = field.element();
		if (part == element) {
			EStructuralFeature own = field.feature();
			return element.eClass().getEAllContainments().stream()
					.filter(each -> !element.eClass().getEAllStructuralFeatures().contains(own)
							&& each.getEReferenceType().getEAllStructuralFeatures().contains(own))
					.findFirst().map(EReference::getName).orElse(own.getName());
		}
		while (part.eContainer() != element) {
			part = part.eContainer();
		}
		return part.eContainingFeature().getName();
	}

	private static List<ElementField> of(EObject element, boolean withIdentity) {
		List<ElementField> fields = new ArrayList<>();
		for (EAttribute attribute : element.eClass().getEAllAttributes()) {
			field(element, attribute).ifPresent(fields::add);
		}
		for (EReference reference : element.eClass().getEAllReferences()) {
			if (!reference.isContainment() && !reference.isContainer()
					&& (withIdentity || !isIdentity(element, reference))) {
				field(element, reference).ifPresent(fields::add);
			}
		}
		for (EReference part : element.eClass().getEAllContainments()) {
			if (part.getEReferenceType() == StockPackage.Literals.EXPRESSION) {
				field(element, part).ifPresent(fields::add);
			} else if (!part.isMany() && element.eGet(part) instanceof EObject there) {
				fields.addAll(of(there));
			} else if (!part.isMany()) {
				missingPart(element, part).or(() -> field(element, part)).ifPresent(fields::add);
			} else if (!isBlock(element)) {
				field(element, part).ifPresent(fields::add);
			}
		}
		return fields;
	}

	/** Whether an element of a list is known by what it refers to, such as a row by its key. */
	private static boolean isIdentity(EObject element, EReference reference) {
		EReference list = element.eContainmentFeature();
		return list != null && list.isMany() && rule(element)
				.flatMap(FieldGrammar::firstFeature).filter(reference.getName()::equals).isPresent();
	}

	private static Optional<ElementField> missingPart(EObject element, EReference part) {
		ICompositeNode whole = ClauseEdits.node(element);
		Optional<AbstractRule> of = rule(element);
		Optional<FieldGrammar> grammar = of.flatMap(rule -> FieldGrammar.of(rule, part.getName()));
		Optional<AbstractRule> partRule = grammar.flatMap(FieldGrammar::valueRule);
		Optional<EStructuralFeature> first = partRule.filter(FieldGrammar::beginsWithAValue).flatMap(FieldGrammar::firstFeature)
				.map(part.getEReferenceType()::getEStructuralFeature).filter(ElementFields::isChosen);
		return first.flatMap(feature -> FieldGrammar.of(partRule.get(), feature.getName())
				.flatMap(FieldGrammar::valueRule)
				.flatMap(value -> MissingField.place(whole, of.get(), grammar.get(), value))
				.map(place -> new ElementField(element, feature, "", Optional.of(place),
						Optional.empty())));
	}

	/** Whether a feature is one of a list of names or words. */
	private static boolean isChosen(EStructuralFeature feature) {
		return !feature.isMany() && (feature instanceof EReference reference ? !reference.isContainment()
				: feature.getEType() instanceof EEnum);
	}

	private static Optional<ElementField> field(EObject element, EStructuralFeature feature) {
		List<INode> nodes = NodeModelUtils.findNodesForFeature(element, feature);
		Optional<ClauseText> clause = ClauseText.of(element, feature);
		boolean isSeveral = feature instanceof EReference reference && (reference.isMany() || reference.isContainment());
		Optional<FieldPlace> place = isSeveral || feature.getName().equals(NAME) && isNamed(element) ? Optional.empty()
				: place(element, feature, nodes);
		String written = String.join(" ", nodes.stream().map(NodeModelUtils::getTokenText).toList());
		String text = place.isPresent() && !written.isEmpty() ? typed(element, feature, written, place.get())
				: clause.map(ClauseText::text).orElse("");
		return place.isEmpty() && clause.isEmpty() ? Optional.empty()
				: Optional.of(new ElementField(element, feature, text, place, clause));
	}

	private static String typed(EObject element, EStructuralFeature feature, String written, FieldPlace place) {
		return feature instanceof EReference ? ReferenceNames.plain(written)
				: feature.isMany() ? written : FieldText.of(element, place.rule()).typed(written);
	}

	/** Whether others refer to an element by its name, so that only renaming may change it. */
	private static boolean isNamed(EObject element) {
		return element instanceof Titled;
	}

	private static Optional<FieldPlace> place(EObject element, EStructuralFeature feature, List<INode> nodes) {
		ICompositeNode whole = ClauseEdits.node(element);
		Optional<AbstractRule> of = rule(element);
		Optional<FieldGrammar> grammar = of.flatMap(rule -> FieldGrammar.of(rule, feature.getName()));
		Optional<AbstractRule> value = grammar.flatMap(FieldGrammar::valueRule)
				.filter(rule -> feature instanceof EReference || FieldText.isFor(rule));
		if (value.isEmpty()) {
			return Optional.empty();
		}
		if (nodes.isEmpty()) {
			return MissingField.place(whole, of.get(), grammar.get(), value.get());
		}
		int start = nodes.get(0).getOffset();
		INode last = nodes.get(nodes.size() - 1);
		String text = whole.getRootNode().getText().substring(start, last.getEndOffset());
		boolean holdsRemark = text.contains("//") && !text.startsWith("\"");
		return holdsRemark ? Optional.empty()
				: Optional.of(new FieldPlace(start, last.getEndOffset() - start, "", "", value.get()));
	}

	/** The rule that an element was read by. */
	static Optional<AbstractRule> rule(EObject element) {
		EObject grammar = ClauseEdits.node(element).getGrammarElement();
		return grammar instanceof RuleCall call ? Optional.of(call.getRule())
				: grammar instanceof Action made ? Optional.of(GrammarUtil.containingRule(made)) : Optional.empty();
	}
}
