package padwright.exchange.tree;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.EcorePackage;

import com.google.inject.Inject;

import padwright.exchange.tree.Leaf.Syntax;

/** Writes a model down as a tree: parts as branches, values as they are written, links as names. */
public final class ModelToTree {

	@Inject
	private LinkNames names;

	/** All that {@code element} contains. */
	public Branch tree(EObject element) {
		return branch(element, new LinkedHashMap<>());
	}

	private Branch branch(EObject element, Map<String, Tree> parts) {
		for (EStructuralFeature feature : Features.of(element.eClass())) {
			if (element.eIsSet(feature) || Features.isAlwaysTold(feature)) {
				parts.put(feature.getName(), tree(element, feature));
			}
		}
		return new Branch(parts, 0);
	}

	private Tree tree(EObject element, EStructuralFeature feature) {
		if (Features.isLink(feature)) {
			return inOneOrMany(feature, names.of(element, (EReference) feature).stream().map(Leaf::string).toList());
		}
		Object value = element.eGet(feature);
		List<?> values = value instanceof List<?> many ? many : List.of(value);
		return inOneOrMany(feature, values.stream().map(each -> tree(feature, each)).toList());
	}

	private static Tree inOneOrMany(EStructuralFeature feature, List<? extends Tree> trees) {
		return feature.isMany() ? new Listing(List.copyOf(trees), 0) : trees.get(0);
	}

	private Tree tree(EStructuralFeature feature, Object value) {
		if (feature instanceof EAttribute attribute) {
			return new Leaf(Values.text(attribute.getEAttributeType(), value), syntax(attribute), 0);
		}
		EObject part = (EObject) value;
		Map<String, Tree> parts = new LinkedHashMap<>();
		if (Features.tellsKind((EClass) feature.getEType())) {
			parts.put(Features.KIND, Leaf.string(part.eClass().getName()));
		}
		return branch(part, parts);
	}

	/** How values of an attribute are written. */
	static Syntax syntax(EAttribute attribute) {
		if (attribute.getEAttributeType() == EcorePackage.Literals.EBOOLEAN) {
			return Syntax.TRUTH;
		}
		return attribute.getEAttributeType() == EcorePackage.Literals.EINT ? Syntax.NUMBER : Syntax.STRING;
	}
}
