package padwright.workbench.editor;

import org.eclipse.core.resources.IFile;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.FillLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.ui.ISaveablePart2;
import org.eclipse.ui.internal.genericeditor.ExtensionBasedTextEditor;

import padwright.workbench.Messages;
import padwright.workbench.menus.BenchMenu;
import padwright.workbench.recovery.RecoveryBar;
import padwright.workbench.safe.SafeDocumentProvider;
import padwright.workbench.session.Documents;

/** The Generic Editor for documents of the language, with a safe way to save and to recover. */
public final class PlanEditor extends ExtensionBasedTextEditor implements ISaveablePart2 {

	public static final String ID = "padwright.workbench.editor";

	private static final String MENU = "padwright.workbench.textMenu";

	public PlanEditor() {
		setDocumentProvider(new SafeDocumentProvider());
	}

	@Override
	public void createPartControl(Composite parent) {
		Composite whole = new Composite(parent, SWT.NONE);
		GridLayoutFactory.fillDefaults().spacing(0, 0).applyTo(whole);
		Composite text = new Composite(whole, SWT.NONE);
		text.setLayout(new FillLayout());
		GridDataFactory.fillDefaults().grab(true, true).applyTo(text);
		super.createPartControl(text);
		ListsByThemselves.watch(getSourceViewer());
		BenchMenu.on(getSourceViewer().getTextWidget(), MENU, getSite());
		getVerticalRuler().getControl().setMenu(null);
		IFile file = getEditorInput().getAdapter(IFile.class);
		if (file != null) {
			Documents.path(file).ifPresent(
					path -> RecoveryBar.offer(whole, path, getDocumentProvider().getDocument(getEditorInput())));
		}
	}

	@Override
	public int promptToSaveOnClose() {
		int answer = MessageDialog.open(MessageDialog.QUESTION_WITH_CANCEL, getSite().getShell(),
				Messages.get("save.close.title"), Messages.get("save.close", getTitle()), SWT.NONE,
				Messages.get("save.close.save"), Messages.get("save.close.drop"), Messages.get("save.close.stay"));
		return answer == 0 ? YES : answer == 1 ? NO : CANCEL;
	}
}
