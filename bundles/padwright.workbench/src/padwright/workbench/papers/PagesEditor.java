package padwright.workbench.papers;

import java.io.IOException;
import java.nio.file.Path;

import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.jface.action.Action;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.RowLayout;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.FileDialog;
import org.eclipse.swt.widgets.Label;
import org.eclipse.ui.IEditorInput;
import org.eclipse.ui.IEditorSite;
import org.eclipse.ui.actions.ActionFactory;
import org.eclipse.ui.part.EditorPart;

import padwright.language.files.SafeFile;
import padwright.views.Palette;
import padwright.views.canvas.SceneCanvas;
import padwright.views.canvas.SceneListener;
import padwright.workbench.Messages;
import padwright.workbench.session.StatusLine;

/** Shows a paper page by page, as it will be printed; saves it as PDF, what is drawn in life size as DXF, and prints it. */
public final class PagesEditor extends EditorPart {

	public static final String ID = "padwright.workbench.pages";

	private static final double ZOOM_STEP = 1.25;

	private SceneCanvas canvas;
	private Label number;
	private Button back;
	private Button on;
	private int shown;

	@Override
	public void init(IEditorSite site, IEditorInput input) {
		setSite(site);
		setInput(input);
		setPartName(input.getName());
	}

	@Override
	public void createPartControl(Composite parent) {
		Composite whole = new Composite(parent, SWT.NONE);
		GridLayoutFactory.fillDefaults().spacing(0, 0).applyTo(whole);
		Composite bar = new Composite(whole, SWT.NONE);
		RowLayout row = new RowLayout();
		row.center = true;
		bar.setLayout(row);
		GridDataFactory.fillDefaults().grab(true, false).applyTo(bar);
		back = button(bar, "papers.back", () -> turn(-1));
		number = new Label(bar, SWT.NONE);
		on = button(bar, "papers.on", () -> turn(1));
		button(bar, "papers.larger", () -> canvas.zoom(ZOOM_STEP));
		button(bar, "papers.smaller", () -> canvas.zoom(1 / ZOOM_STEP));
		button(bar, "papers.whole", () -> canvas.showWhole());
		button(bar, "papers.savePdf", this::savePdf);
		if (pages().drawing().isPresent()) {
			button(bar, "papers.saveDxf", this::saveDxf);
		}
		button(bar, "papers.print", this::print);
		canvas = new SceneCanvas(whole, Palette.paper(), new SceneListener() {
		});
		canvas.setName(getTitle());
		GridDataFactory.fillDefaults().grab(true, true).applyTo(canvas);
		getEditorSite().getActionBars().setGlobalActionHandler(ActionFactory.PRINT.getId(),
				new Action(Messages.get("papers.print")) {
					@Override
					public void run() {
						print();
					}
				});
		turn(0);
	}

	private static Button button(Composite bar, String words, Runnable action) {
		Button button = new Button(bar, SWT.PUSH);
		button.setText(Messages.get(words));
		button.addListener(SWT.Selection, pressed -> action.run());
		return button;
	}

	private Pages pages() {
		return ((PagesInput) getEditorInput()).pages();
	}

	private void turn(int step) {
		int last = pages().scenes().size() - 1;
		shown = Math.max(0, Math.min(last, shown + step));
		back.setEnabled(shown > 0);
		on.setEnabled(shown < last);
		number.setText(Messages.get("papers.page", shown + 1, last + 1));
		number.getParent().layout();
		canvas.setSource(aspect -> pages().scenes().get(shown));
	}

	private void savePdf() {
		save(Messages.get("papers.savePdf.title"), ".pdf", () -> pages().pdf());
	}

	private void saveDxf() {
		save(Messages.get("papers.saveDxf.title"), ".dxf", () -> pages().dxf());
	}

	/** What a file is to hold. */
	private interface Content {

		byte[] bytes() throws IOException;
	}

	private void save(String title, String ending, Content content) {
		FileDialog dialog = new FileDialog(getSite().getShell(), SWT.SAVE);
		dialog.setText(title);
		dialog.setFileName(pages().name() + ending);
		dialog.setFilterExtensions(new String[] {"*" + ending});
		dialog.setOverwrite(true);
		String chosen = dialog.open();
		if (chosen != null) {
			write(Path.of(chosen), content);
		}
	}

	private void write(Path file, Content content) {
		try {
			SafeFile.write(file, content.bytes());
			StatusLine.tell(Messages.get("papers.saved", file), false);
		} catch (IOException failed) {
			MessageDialog.openError(getSite().getShell(), getTitle(),
					Messages.get("save.failed", file, failed.getMessage()));
		}
	}

	private void print() {
		PagePrinter.print(getSite().getShell(), pages());
	}

	@Override
	public void setFocus() {
		canvas.setFocus();
	}

	@Override
	public void doSave(IProgressMonitor monitor) {
		savePdf();
	}

	@Override
	public void doSaveAs() {
		savePdf();
	}

	@Override
	public boolean isDirty() {
		return false;
	}

	@Override
	public boolean isSaveAsAllowed() {
		return true;
	}
}
