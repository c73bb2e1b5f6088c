package padwright.workbench.reports;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.FileDialog;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.handlers.HandlerUtil;

import padwright.workbench.Messages;

/**
 * Takes over what another program wrote: a document beside the one in the editor, or the readings of a digital indicator
 * into the plan in the editor.
 */
public final class ImportHandler extends AbstractHandler {

	private static final String WHAT = "padwright.workbench.import.what";
	private static final String READINGS = "readings";

	@Override
	public Object execute(ExecutionEvent event) {
		IWorkbenchPage page = HandlerUtil.getActiveWorkbenchWindow(event).getActivePage();
		Shell shell = HandlerUtil.getActiveShell(event);
		Optional<Path> open = SavedDocument.in(page);
		if (open.isEmpty()) {
			return null;
		}
		boolean readings = READINGS.equals(event.getParameter(WHAT));
		Optional<String> file = ask(shell, SWT.OPEN, readings ? "import.readings.title" : "import.title",
				readings ? new String[] {"*.csv"} : ExportHandler.forms());
		Optional<String> target = readings || file.isEmpty() ? open.map(Path::toString)
				: ask(shell, SWT.SAVE, "import.target.title", new String[] {"*.plan", "*.stock", "*.keys"});
		if (file.isPresent() && target.isPresent()) {
			CommandAnswer.carryOut("import", Path.of(file.get()), List.of(readings ? "--into" : "-o", target.get()));
		}
		return null;
	}

	private static Optional<String> ask(Shell shell, int way, String title, String[] forms) {
		FileDialog dialog = new FileDialog(shell, way);
		dialog.setText(Messages.get(title));
		dialog.setFilterExtensions(forms);
		return Optional.ofNullable(dialog.open());
	}
}
