package padwright.workbench.compare;

import org.eclipse.compare.ITypedElement;
import org.eclipse.compare.structuremergeviewer.DocumentRangeNode;
import org.eclipse.jface.text.IDocument;
import org.eclipse.swt.graphics.Image;

/** An element or key in one of two copies that are compared. */
final class StretchNode extends DocumentRangeNode implements ITypedElement {

	/** The ending decides how its text is compared: as a document is. */
	private static final String TYPE = "plan";

	StretchNode(DocumentRangeNode parent, String id, IDocument document, int start, int length) {
		super(parent, 0, id, document, start, length);
	}

	@Override
	public String getName() {
		return getId();
	}

	@Override
	public Image getImage() {
		return null;
	}

	@Override
	public String getType() {
		return TYPE;
	}
}
