package padwright.language.ide.fixes;

import java.util.List;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.xtext.nodemodel.INode;
import org.eclipse.xtext.nodemodel.util.NodeModelUtils;

import padwright.language.edit.TextEdit;

/** Where the parts of elements stand in the text. */
final class NodeText {

	private NodeText() {
	}

	static INode node(EObject element) {
		return NodeModelUtils.findActualNodeFor(element);
	}

	static List<INode> nodes(EObject element, EStructuralFeature feature) {
		return NodeModelUtils.findNodesForFeature(element, feature);
	}

	/** The element as it is written; nothing for null. */
	static String of(EObject element) {
		return element == null ? "" : NodeModelUtils.getTokenText(node(element));
	}

	static TextEdit replace(INode node, String text) {
		return new TextEdit(node.getOffset(), node.getLength(), text);
	}

	static TextEdit insertAfter(INode node, String text) {
		return new TextEdit(node.getEndOffset(), 0, text);
	}

	/** Takes an element away with the blanks before it, and with its line where it fills that. */
	static TextEdit remove(INode node) {
		String before = node.getRootNode().getText().substring(0, node.getOffset());
		int start = before.stripTrailing().length();
		int lineEnd = before.lastIndexOf('\n');
		int from = Math.max(start, lineEnd < 0 ? 0 : lineEnd);
		return new TextEdit(from, node.getEndOffset() - from, "");
	}
}
