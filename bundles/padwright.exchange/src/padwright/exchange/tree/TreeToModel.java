package padwright.exchange.tree;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EEnum;
import org.eclipse.emf.ecore.ENamedElement;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.util.EcoreUtil;

import padwright.exchange.tree.Leaf.Syntax;
import padwright.model.keysystem.KeySystemPackage;
import padwright.model.keysystem.Titled;
import padwright.workup.words.NearestName;

/** Builds a model from a tree. A link becomes a thing of its name that stands nowhere. */
public final class TreeToModel {

	private TreeToModel() {
	}

	/**
	 * The model that a tree tells of.
	 *
	 * @throws ExchangeException if a part has no place in it
	 */
	public static EObject model(EClass type, Branch tree) throws ExchangeException {
		EClass kind = Features.tellsKind(type) ? kind(type, tree) : type;
		EObject element = EcoreUtil.create(kind);
		for (Map.Entry<String, Tree> part : tree.parts().entrySet()) {
			if (!Features.tellsKind(type) || !part.getKey().equals(Features.KIND)) {
				set(element, feature(kind, part.getKey(), part.getValue().line()), part.getValue());
			}
		}
		return element;
	}

	private static EClass kind(EClass type, Branch tree) throws ExchangeException {
		List<String> names = names(Features.kinds(type));
		Tree told = tree.parts().get(Features.KIND);
		if (!(told instanceof Leaf leaf) || !names.contains(leaf.text())) {
			throw new ExchangeException(tree.line(),
					"it is not said what this is; write \"is\" and one of " + String.join(", ", names));
		}
		return Features.kinds(type).get(names.indexOf(leaf.text()));
	}

	private static EStructuralFeature feature(EClass type, String name, int line) throws ExchangeException {
		for (EStructuralFeature feature : Features.of(type)) {
			if (feature.getName().equals(name)) {
				return feature;
			}
		}
		throw new ExchangeException(line, type.getName() + " has no \"" + name + "\"; did you mean \""
				+ NearestName.among(names(Features.of(type)), name) + "\"?");
	}

	private static void set(EObject element, EStructuralFeature feature, Tree tree) throws ExchangeException {
		if (!feature.isMany()) {
			element.eSet(feature, value(feature, tree));
			return;
		}
		List<Object> values = new ArrayList<>();
		for (Tree part : parts(feature, tree)) {
			values.add(value(feature, part));
		}
		element.eSet(feature, values);
	}

	/** A cell of a table holds many values with blanks between. */
	private static List<? extends Tree> parts(EStructuralFeature feature, Tree tree) throws ExchangeException {
		if (tree instanceof Leaf cell && cell.syntax() == Syntax.CELL && !Features.isPart(feature)) {
			return Words.split(cell.text()).stream()
					.map(word -> new Leaf(word, Syntax.CELL, cell.line())).toList();
		}
		if (tree instanceof Listing listing) {
			return listing.parts();
		}
		throw wrongKind(feature, tree, "a list");
	}

	private static Object value(EStructuralFeature feature, Tree tree) throws ExchangeException {
		if (Features.isPart(feature)) {
			if (tree instanceof Branch branch) {
				return model((EClass) feature.getEType(), branch);
			}
			if (tree instanceof Leaf cell && cell.syntax() == Syntax.CELL && cell.text().equals(Leaf.EMPTY_PART)) {
				return model((EClass) feature.getEType(), new Branch(Map.of(), cell.line()));
			}
			throw wrongKind(feature, tree, "an object");
		}
		if (!(tree instanceof Leaf leaf)) {
			throw wrongKind(feature, tree, "a text");
		}
		return feature instanceof EAttribute attribute ? value(attribute, leaf) : link(feature, leaf);
	}

	private static Object value(EAttribute attribute, Leaf leaf) throws ExchangeException {
		Syntax syntax = ModelToTree.syntax(attribute);
		if (leaf.syntax() != syntax && leaf.syntax() != Syntax.CELL) {
			throw wrongKind(attribute, leaf, syntax == Syntax.STRING ? "a text in quotes, so that it stays exact"
					: new Leaf("", syntax, 0).kind());
		}
		try {
			return Values.value(attribute.getEAttributeType(), leaf.text());
		} catch (IllegalArgumentException wrong) {
			throw new ExchangeException(leaf.line(), "\"" + leaf.text() + "\" does not go into \"" + attribute.getName()
					+ "\": " + (attribute.getEAttributeType() instanceof EEnum choice
							? "write one of " + String.join(", ", literals(choice)) : wrong.getMessage()));
		}
	}

	private static Object link(EStructuralFeature feature, Leaf leaf) throws ExchangeException {
		if (leaf.syntax() != Syntax.STRING && leaf.syntax() != Syntax.CELL || leaf.text().isBlank()) {
			throw wrongKind(feature, leaf, "the name of a " + feature.getEType().getName());
		}
		Titled named = (Titled) EcoreUtil.create((EClass) feature.getEType());
		named.eSet(KeySystemPackage.Literals.TITLED__NAME, leaf.text());
		return named;
	}

	private static ExchangeException wrongKind(EStructuralFeature feature, Tree found, String expected) {
		return new ExchangeException(found.line(),
				"\"" + feature.getName() + "\" is " + found.kind() + " here; it should be " + expected);
	}

	private static List<String> names(Collection<? extends ENamedElement> elements) {
		return elements.stream().map(ENamedElement::getName).toList();
	}

	private static List<String> literals(EEnum choice) {
		return choice.getELiterals().stream().map(literal -> literal.getLiteral()).toList();
	}
}
