package padwright.language.edit;

import java.util.List;
import java.util.Set;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.xtext.GrammarUtil;
import org.eclipse.xtext.RuleCall;
import org.eclipse.xtext.nodemodel.ICompositeNode;
import org.eclipse.xtext.nodemodel.ILeafNode;
import org.eclipse.xtext.nodemodel.INode;
import org.eclipse.xtext.nodemodel.util.NodeModelUtils;

import padwright.model.plan.KeyService;

/** Where the clauses of a row stand in a plan's text, and how one is put there without touching the others. */
final class ClauseEdits {

	/** The words that begin what stands behind the readings of a row. */
	private static final Set<String> BEHIND_ROUNDS = Set.of("delivered", "remark");
	private static final Set<String> BEHIND_EMPTY = Set.of("stack", "felt", "delivered", "remark");
	private static final Set<String> BEHIND_STACK = Set.of("felt", "delivered", "remark");

	private ClauseEdits() {
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

	/** What stands from one place of a row to another, without remarks and line ends. */
	static String inOneLine(INode row, int start, int end) {
		StringBuilder text = new StringBuilder();
		for (ILeafNode leaf : row.getLeafNodes()) {
			if (leaf.getOffset() >= start && leaf.getOffset() < end) {
				text.append(leaf.isHidden() && leaf.getText().startsWith("//") ? "\n" : leaf.getText());
			}
		}
		return text.toString().strip().replaceAll("\\s*\\R\\s*", " ");
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

	/** The text of an element as its own rule reads it, where it is one of several ways to say one kind of thing. */
	static ICompositeNode node(EObject element) {
		ICompositeNode node = NodeModelUtils.findActualNodeFor(element);
		while (node != null && node.getGrammarElement() instanceof RuleCall call
				&& GrammarUtil.containedAssignments(call.getRule()).isEmpty()
				&& node.getFirstChild() instanceof ICompositeNode way) {
			node = way;
		}
		return node;
	}

	/** The nodes of a feature's values, in their order. */
	static List<INode> nodes(EObject element, EStructuralFeature feature) {
		return NodeModelUtils.findNodesForFeature(element, feature);
	}

	/** The last thing in a row that stands before where the gaps of its empty cup belong. */
	static INode beforeEmpty(KeyService row) {
		return before(node(row), BEHIND_EMPTY);
	}

	/** The last thing in a row that stands before its full shims, or before where they belong. */
	static INode beforeStack(KeyService row) {
		return before(node(row), BEHIND_STACK);
	}

	/** The last thing in a row that stands before where another round belongs. */
	static INode beforeAnotherRound(KeyService row) {
		return before(node(row), BEHIND_ROUNDS);
	}

	/** Found by the words that begin the later clauses, so that it holds for whatever else a row may say. */
	private static INode before(INode row, Set<String> later) {
		INode last = null;
		for (ILeafNode leaf : row.getLeafNodes()) {
			if (last != null && later.contains(leaf.getText())) {
				break;
			}
			last = leaf.isHidden() ? last : leaf;
		}
		return last;
	}

	static int end(INode node) {
		return node.getOffset() + node.getLength();
	}
}
