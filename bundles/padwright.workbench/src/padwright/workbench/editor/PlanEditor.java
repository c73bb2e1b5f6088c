package padwright.workbench.editor;

import org.eclipse.ui.internal.genericeditor.ExtensionBasedTextEditor;

import padwright.workbench.safe.SafeDocumentProvider;

/** The Generic Editor for documents of the language, with a safe way to save. */
public final class PlanEditor extends ExtensionBasedTextEditor {

	public static final String ID = "padwright.workbench.editor";

	public PlanEditor() {
		setDocumentProvider(new SafeDocumentProvider());
	}
}
