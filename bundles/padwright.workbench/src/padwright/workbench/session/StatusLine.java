package padwright.workbench.session;

import org.eclipse.swt.widgets.Display;
import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.PlatformUI;

/** The line below the editor, for what needs no answer. */
public final class StatusLine {

	private StatusLine() {
	}

	/** Shows a text in the active window; from any thread. */
	public static void tell(String text, boolean error) {
		Display display = PlatformUI.getWorkbench().getDisplay();
		display.asyncExec(() -> {
			IWorkbenchWindow window = PlatformUI.getWorkbench().getActiveWorkbenchWindow();
			IEditorPart editor = window == null || window.getActivePage() == null ? null
					: window.getActivePage().getActiveEditor();
			if (editor != null) {
				var line = editor.getEditorSite().getActionBars().getStatusLineManager();
				line.setErrorMessage(error ? text : null);
				line.setMessage(error ? null : text);
			}
		});
	}
}
