package padwright.workbench.reports;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.FileDialog;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.handlers.HandlerUtil;

import padwright.exchange.AddedFormats;
import padwright.exchange.Format;
import padwright.workbench.Messages;

/** Writes the document in the editor for other programs; the form is that of the name the user gives. */
public final class ExportHandler extends AbstractHandler {

	@Override
	public Object execute(ExecutionEvent event) {
		IWorkbenchPage page = HandlerUtil.getActiveWorkbenchWindow(event).getActivePage();
		Optional<Path> document = SavedDocument.in(page);
		if (document.isPresent()) {
			FileDialog dialog = new FileDialog(HandlerUtil.getActiveShell(event), SWT.SAVE);
			dialog.setText(Messages.get("export.title"));
			dialog.setFilterExtensions(forms());
			dialog.setFileName(document.get().getFileName() + ".json");
			dialog.setOverwrite(true);
			String chosen = dialog.open();
			if (chosen != null) {
				CommandAnswer.carryOut("export", document.get(), List.of("-o", chosen));
			}
		}
		return null;
	}

	/** The endings of all formats, those of extensions behind the program's own. */
	static String[] forms() {
		return Stream.concat(Arrays.stream(Format.values()).map(Format::extension),
				AddedFormats.installed().documents().stream()).map(ending -> "*." + ending).toArray(String[]::new);
	}
}
