package padwright.workbench.bench;

import java.util.Optional;

import org.eclipse.jface.text.IDocument;
import org.eclipse.xtext.resource.XtextResource;

import padwright.model.keysystem.KeySystem;
import padwright.workbench.editor.Places;
import padwright.workbench.session.Documents;

/** The text that a key system was read from. */
final class SystemText {

	private SystemText() {
	}

	/** The server's name of its document. */
	static String uri(KeySystem system) {
		return system.eResource().getURI().toString();
	}

	/** The text in its editor, which is opened if it is not; nothing where it is another meanwhile, or cannot be opened. */
	static Optional<IDocument> open(KeySystem system) {
		String read = ((XtextResource) system.eResource()).getParseResult().getRootNode().getText();
		return Documents.file(uri(system)).flatMap(Places::show)
				.map(editor -> editor.getDocumentProvider().getDocument(editor.getEditorInput()))
				.filter(text -> text.get().equals(read));
	}
}
