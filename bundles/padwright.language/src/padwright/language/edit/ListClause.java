package padwright.language.edit;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.xtext.nodemodel.INode;

/** The values of a list in the text of an element: touches, couplings, bearings, presses. */
record ListClause(EObject element, EStructuralFeature feature) {

	private static final String SEPARATOR = ", ";

	private List<INode> nodes() {
		return ClauseEdits.nodes(element, feature);
	}

	/** Adds a value behind the others, or begins the clause with it. */
	TextEdit add(String value) {
		List<INode> nodes = nodes();
		if (!nodes.isEmpty()) {
			return ClauseEdits.insertion(nodes.get(nodes.size() - 1), SEPARATOR + value);
		}
		WrittenClause clause = WrittenClause.of(element, feature.getName()).orElseThrow();
		return clause.put(clause.word() + " " + value);
	}

	/** Takes values out by their place in the list; with the last one the clause goes. */
	List<TextEdit> remove(Set<Integer> places) {
		List<INode> nodes = nodes();
		if (places.size() >= nodes.size()) {
			return WrittenClause.of(element, feature.getName()).map(WrittenClause::takeOut).orElse(List.of());
		}
		List<TextEdit> edits = new ArrayList<>();
		boolean isFirst = true;
		for (int place = 0; place < nodes.size(); place++) {
			if (!places.contains(place)) {
				isFirst = false;
			} else {
				int start = isFirst ? nodes.get(place).getOffset() : ClauseEdits.end(nodes.get(place - 1));
				int end = isFirst ? nodes.get(place + 1).getOffset() : ClauseEdits.end(nodes.get(place));
				edits.add(ClauseEdits.removal(ClauseEdits.node(element), start, end));
			}
		}
		return edits;
	}
}
