package padwright.language.edit;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.xtext.nodemodel.ICompositeNode;
import org.eclipse.xtext.nodemodel.util.NodeModelUtils;

/** What somebody wrote for an element. */
public final class WrittenText {

	private WrittenText() {
	}

	/** On one line, without comments; nothing for an element that was not read from a text. */
	public static String of(EObject element) {
		ICompositeNode node = NodeModelUtils.findActualNodeFor(element);
		return node == null ? "" : NodeModelUtils.getTokenText(node).strip().replaceAll("\\s+", " ");
	}
}
