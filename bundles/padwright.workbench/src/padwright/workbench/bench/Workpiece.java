package padwright.workbench.bench;

import java.util.Optional;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.xtext.nodemodel.INode;
import org.eclipse.xtext.nodemodel.util.NodeModelUtils;
import org.eclipse.xtext.resource.XtextResource;

import padwright.model.keysystem.KeySystem;
import padwright.views.layout.Layout;
import padwright.views.map.KeyMapState;

/** What a text is about: a plan, or a key system. As the text was at one moment; nothing changes it later. */
public sealed interface Workpiece permits PlanOnBench, SystemOnBench {

	/** Of its document, as the server knows it. */
	String uri();

	/** Of the whole document. */
	String text();

	KeyMapState map();

	/** All parts of its system; without anything where that is not known. */
	Layout layout();

	/** The key system, if it is known. */
	Optional<KeySystem> keySystem();

	/** The key whose row, or definition, an offset in the text is in. */
	Optional<String> keyAt(int offset);

	/** Whether it is what is read at an offset: the text there is its own, or nothing else is there. */
	boolean isAt(int offset);

	/** Where the row, or the definition, of a key begins in the text. */
	Optional<Integer> offset(String key);

	/** That of a document at an offset, or else its first; nothing in a document with neither plan nor system. */
	static Optional<Workpiece> of(String uri, XtextResource document, int offset) {
		return PlanOnBench.of(uri, document, offset).<Workpiece>map(plan -> plan)
				.or(() -> SystemOnBench.of(uri, document, offset));
	}

	/** Whether the text of an element spans an offset. */
	static boolean spans(EObject element, int offset) {
		INode node = NodeModelUtils.findActualNodeFor(element);
		return node != null && node.getOffset() <= offset && offset <= node.getEndOffset();
	}
}
