package padwright.workbench.editor;

import java.nio.file.Path;
import java.util.Optional;

import org.eclipse.core.resources.IFile;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.jface.action.Action;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.text.BadLocationException;
import org.eclipse.jface.text.IDocument;
import org.eclipse.jface.text.ITextOperationTarget;
import org.eclipse.jface.text.ITextSelection;
import org.eclipse.jface.text.source.ISourceViewer;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.FillLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.ui.ISaveablePart2;
import org.eclipse.ui.internal.genericeditor.ExtensionBasedTextEditor;
import org.eclipse.ui.part.FileEditorInput;
import org.eclipse.ui.texteditor.ITextEditorActionConstants;

import padwright.workbench.Messages;
import padwright.workbench.menus.BenchMenu;
import padwright.workbench.recovery.RecoveryBar;
import padwright.workbench.safe.OnDisk;
import padwright.workbench.safe.SafeDocumentProvider;

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
			OnDisk.path(file).ifPresent(
					path -> RecoveryBar.offer(whole, path, getDocumentProvider().getDocument(getEditorInput())));
		}
	}

	@Override
	protected void performSaveAs(IProgressMonitor monitor) {
		IFile now = getEditorInput().getAdapter(IFile.class);
		Optional<Path> chosen = now == null ? Optional.empty() : SaveAs.ask(getSite().getShell(), now);
		monitor.setCanceled(chosen.isEmpty());
		chosen.ifPresent(this::saveAs);
	}

	/** Saves the text as another document, and goes on in that. */
	public void saveAs(Path other) {
		String text = getDocumentProvider().getDocument(getEditorInput()).get();
		SaveAs.write(getSite().getShell(), other, text).ifPresent(file -> setInput(new FileEditorInput(file)));
	}

	/** Where the caret is, as findings name it. */
	@Override
	protected String getCursorPosition() {
		return getSelectionProvider().getSelection() instanceof ITextSelection caret
				? Messages.get("editor.line", caret.getStartLine() + 1) : "";
	}

	/** A click on a lamp beside the text offers the cures of its line. */
	@Override
	protected void createActions() {
		super.createActions();
		setAction(ITextEditorActionConstants.RULER_CLICK, new Action() {
			@Override
			public void run() {
				offerCures(getVerticalRuler().getLineOfLastMouseButtonActivity());
			}
		});
	}

	/** @param line from 0 */
	private void offerCures(int line) {
		try {
			IDocument text = getDocumentProvider().getDocument(getEditorInput());
			String words = text.get(text.getLineOffset(line), text.getLineLength(line));
			selectAndReveal(text.getLineOffset(line) + words.length() - words.stripLeading().length(), 0);
			((ITextOperationTarget) getSourceViewer()).doOperation(ISourceViewer.QUICK_ASSIST);
		} catch (BadLocationException beyondTheText) {
			// There is nothing to cure.
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
