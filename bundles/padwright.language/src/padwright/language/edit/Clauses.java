package padwright.language.edit;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.xtext.Keyword;
import org.eclipse.xtext.nodemodel.ILeafNode;
import org.eclipse.xtext.nodemodel.INode;
import org.eclipse.xtext.nodemodel.util.NodeModelUtils;

import padwright.model.plan.KeyService;
import padwright.model.plan.Round;

/** Where the clauses of a row stand in a plan's text, and how one is put there without touching the others. */
final class Clauses {

	private Clauses() {
	}

	/** Replaces a clause from its keyword to the end of its last node; the remarks inside it come behind it. */
	static TextEdit replacement(INode row, String keyword, INode last, String clause) {
		int start = keyword(row, keyword).getOffset();
		return new TextEdit(start, end(last) - start, clause + remarks(row, start, end(last)));
	}

	/** Takes out what stands from one place of a row to another, but leaves the remarks. */
	static TextEdit removal(INode row, int start, int end) {
		return new TextEdit(start, end - start, remarks(row, start, end));
	}

	private static String remarks(INode row, int start, int end) {
		StringBuilder text = new StringBuilder();
		for (ILeafNode leaf : row.getLeafNodes()) {
			if (leaf.isHidden() && leaf.getText().startsWith("//") && leaf.getOffset() > start
					&& leaf.getOffset() < end) {
				text.append(' ').append(leaf.getText());
			}
		}
		return text.toString();
	}

	static TextEdit insertion(INode behind, String text) {
		return new TextEdit(end(behind), 0, text);
	}

	static TextEdit replaced(INode node, String text) {
		return new TextEdit(node.getOffset(), node.getLength(), text);
	}

	private static INode keyword(INode row, String keyword) {
		for (ILeafNode leaf : row.getLeafNodes()) {
			if (!leaf.isHidden() && leaf.getText().equals(keyword)) {
				return leaf;
			}
		}
		throw new IllegalStateException("a row with such a clause has the word " + keyword);
	}

	static INode node(EObject element) {
		return NodeModelUtils.findActualNodeFor(element);
	}

	/** The nodes of a feature's values, in their order. */
	static List<INode> nodes(EObject element, EStructuralFeature feature) {
		return NodeModelUtils.findNodesForFeature(element, feature);
	}

	/** The last thing in a row that stands before the gaps of the empty cup. */
	static INode beforeEmpty(KeyService service) {
		return before(service, Set.of("empty", "stack", "felt", "delivered", "remark"));
	}

	/** The last thing in a row that stands before the stack. */
	static INode beforeStack(KeyService service) {
		return before(service, Set.of("stack", "felt", "delivered", "remark"));
	}

	/** The last word before the first of some clauses; of the row where it has none of them. */
	private static INode before(KeyService service, Set<String> keywords) {
		INode last = null;
		for (ILeafNode leaf : node(service).getLeafNodes()) {
			if (leaf.getGrammarElement() instanceof Keyword && keywords.contains(leaf.getText())) {
				return last;
			}
			last = leaf.isHidden() ? last : leaf;
		}
		return last;
	}

	/** The last thing in a row that stands before its remark: where another round begins. */
	static INode beforeRemark(KeyService service) {
		List<Round> rounds = service.getRounds();
		return firstOf(rounds.isEmpty() ? null : rounds.get(rounds.size() - 1), service.getStack())
				.orElseGet(() -> beforeStack(service));
	}

	private static Optional<INode> firstOf(EObject... parts) {
		return Stream.of(parts).filter(part -> part != null).findFirst().map(Clauses::node);
	}

	static int end(INode node) {
		return node.getOffset() + node.getLength();
	}
}
