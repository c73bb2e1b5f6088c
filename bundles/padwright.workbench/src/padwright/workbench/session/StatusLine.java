package padwright.workbench.session;

import org.eclipse.jface.action.IStatusLineManager;
import org.eclipse.swt.widgets.Display;
import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.PlatformUI;

/** The line below the editor, for what needs no answer. */
public final class StatusLine {

	/** What was told last, so that only that is taken away; in the UI thread. */
	private static Object newest;

	private StatusLine() {
	}

	/** Long enough to read a sentence twice. */
	private static final int SHOWN_MILLISECONDS = 12_000;

	/** Shows a text in the active window, for a while; from any thread. */
	public static void tell(String text, boolean error) {
		tell(text, error, SHOWN_MILLISECONDS);
	}

	static void tell(String text, boolean error, int shownMilliseconds) {
		Display display = PlatformUI.getWorkbench().getDisplay();
		display.asyncExec(() -> {
			IWorkbenchWindow window = PlatformUI.getWorkbench().getActiveWorkbenchWindow();
			IEditorPart editor = window == null || window.getActivePage() == null ? null
					: window.getActivePage().getActiveEditor();
			if (editor != null) {
				IStatusLineManager line = editor.getEditorSite().getActionBars().getStatusLineManager();
				show(text, error, line);
				Object mine = new Object();
				newest = mine;
				display.timerExec(shownMilliseconds, () -> {
					if (newest == mine) {
						show("", false, line);
					}
				});
			}
		});
	}

	private static void show(String text, boolean error, IStatusLineManager line) {
		line.setErrorMessage(error ? text : null);
		line.setMessage(error || text.isEmpty() ? null : text);
	}
}
