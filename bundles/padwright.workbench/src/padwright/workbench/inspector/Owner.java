package padwright.workbench.inspector;

import org.eclipse.emf.common.util.URI;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.xtext.nodemodel.util.NodeModelUtils;

import padwright.workbench.Messages;

/** Where something is said, as in {@code boehm.keys, line 31}. */
final class Owner {

	private Owner() {
	}

	static String of(EObject element) {
		return Messages.get("inspector.owner", URI.decode(element.eResource().getURI().lastSegment()),
				NodeModelUtils.findActualNodeFor(element).getStartLine());
	}
}
