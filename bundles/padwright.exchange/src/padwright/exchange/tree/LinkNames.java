package padwright.exchange.tree;

import java.util.List;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.xtext.linking.impl.LinkingHelper;
import org.eclipse.xtext.nodemodel.INode;
import org.eclipse.xtext.nodemodel.util.NodeModelUtils;

import com.google.inject.Inject;

import padwright.model.keysystem.Titled;
import padwright.model.plan.Plan;
import padwright.model.stock.Stock;

/** The names by which a model refers to things. */
public final class LinkNames {

	@Inject
	private LinkingHelper links;

	/** The names as they are written in the text of {@code from}; of the things themselves where there is no text. */
	List<String> of(EObject from, EReference reference) {
		List<INode> nodes = NodeModelUtils.findNodesForFeature(from, reference);
		if (!nodes.isEmpty()) {
			return nodes.stream().map(node -> links.getCrossRefNodeAsString(node, true)).toList();
		}
		Object value = from.eGet(reference);
		List<?> targets = value instanceof List<?> many ? many : List.of(value);
		return targets.stream().map(target -> name(from, (EObject) target)).toList();
	}

	/**
	 * The name of a thing, with that of its stock before it where the plan draws on another.
	 *
	 * @param from what refers to it
	 */
	public static String name(EObject from, EObject target) {
		String name = target instanceof Titled titled ? titled.getName() : null;
		if (name != null && target.eContainer() instanceof Stock stock && plan(from) != null
				&& plan(from).getStock() != stock) {
			return stock.getName() + "." + name;
		}
		return name;
	}

	private static Plan plan(EObject element) {
		EObject container = element;
		while (container != null && !(container instanceof Plan)) {
			container = container.eContainer();
		}
		return (Plan) container;
	}
}
