package padwright.workbench.wizards;

import java.lang.reflect.InvocationTargetException;

import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.ICoreRunnable;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.jface.dialogs.ErrorDialog;
import org.eclipse.jface.viewers.IStructuredSelection;
import org.eclipse.jface.wizard.Wizard;
import org.eclipse.ui.INewWizard;
import org.eclipse.ui.IWorkbench;

import padwright.workbench.Messages;

/** A wizard that makes something new. Its work is done in the background; where it fails, the wizard stays open. */
abstract class NewWizard extends Wizard implements INewWizard {

	NewWizard(String titleKey) {
		setWindowTitle(Messages.get(titleKey));
		setNeedsProgressMonitor(true);
	}

	@Override
	public void init(IWorkbench workbench, IStructuredSelection selection) {
		// What is open says more than what is chosen.
	}

	/** Does the work in the background; tells whether it went well. */
	final boolean carryOut(ICoreRunnable work) {
		try {
			getContainer().run(true, false, monitor -> {
				try {
					work.run(monitor);
				} catch (CoreException failed) {
					throw new InvocationTargetException(failed);
				}
			});
			return true;
		} catch (InvocationTargetException failed) {
			ErrorDialog.openError(getShell(), getWindowTitle(), null, status(failed.getCause()));
			return false;
		} catch (InterruptedException cancelled) {
			return false;
		}
	}

	private static IStatus status(Throwable failure) {
		return failure instanceof CoreException known ? known.getStatus()
				: Status.error(String.valueOf(failure.getLocalizedMessage()), failure);
	}
}
