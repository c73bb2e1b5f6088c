package padwright.workbench.app;

import org.eclipse.jface.action.Action;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.ui.IWorkbenchWindow;

import padwright.workbench.Messages;

/** Puts the views back where they were at first, once somebody says so. */
final class ResetLayout extends Action {

	private final IWorkbenchWindow window;

	ResetLayout(IWorkbenchWindow window) {
		super(Messages.get("layout.reset"));
		this.window = window;
	}

	@Override
	public void run() {
		int answer = MessageDialog.open(MessageDialog.QUESTION, window.getShell(), Messages.get("layout.reset.title"),
				Messages.get("layout.reset.question"), 0, Messages.get("layout.reset.do"), Messages.get("layout.reset.leave"));
		if (answer == 0 && window.getActivePage() != null) {
			window.getActivePage().resetPerspective();
		}
	}
}
