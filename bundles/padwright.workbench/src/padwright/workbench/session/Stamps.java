package padwright.workbench.session;

import org.eclipse.jface.text.IDocument;
import org.eclipse.jface.text.IDocumentExtension4;

/** Tells whether a text is still the same. */
public final class Stamps {

	private Stamps() {
	}

	/** Differs after every change of a text. */
	public static long of(IDocument document) {
		return ((IDocumentExtension4) document).getModificationStamp();
	}
}
