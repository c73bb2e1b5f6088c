package padwright.workbench.reports;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.FileDialog;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.handlers.HandlerUtil;

import padwright.workbench.Messages;

/** Writes the document in the editor for other programs; the form is that of the name the user gives. */
public final class ExportHandler extends AbstractHandler {

	static final String[] FORMS = {"*.json", "*.csv", "*.xmi"};

	@Override
	public Object execute(ExecutionEvent event) {
		IWorkbenchPage page = HandlerUtil.getActiveWorkbenchWindow(event).getActivePage();
		Optional<Path> document = SavedDocument.in(page);
		if (document.isPresent()) {
			FileDialog dialog = new FileDialog(HandlerUtil.getActiveShell(event), SWT.SAVE);
			dialog.setText(Messages.get("export.title"));
			dialog.setFilterExtensions(FORMS);
			dialog.setFileName(document.get().getFileName() + ".json");
			dialog.setOverwrite(true);
			String chosen = dialog.open();
			if (chosen != null) {
				CommandAnswer.carryOut("export", document.get(), List.of("-o", chosen));
			}
		}
		return null;
	}
}
