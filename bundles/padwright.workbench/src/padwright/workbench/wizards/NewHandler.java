package padwright.workbench.wizards;

import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.commands.ExecutionException;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.IConfigurationElement;
import org.eclipse.core.runtime.IExecutableExtension;
import org.eclipse.jface.viewers.StructuredSelection;
import org.eclipse.jface.wizard.WizardDialog;
import org.eclipse.ui.IWorkbench;
import org.eclipse.ui.IWorkbenchWizard;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.handlers.HandlerUtil;

/** Opens the wizard whose name stands behind this class in the extension. */
public final class NewHandler extends AbstractHandler implements IExecutableExtension {

	private String wizard;

	@Override
	public void setInitializationData(IConfigurationElement config, String property, Object data) {
		wizard = (String) data;
	}

	@Override
	public Object execute(ExecutionEvent event) throws ExecutionException {
		IWorkbench workbench = PlatformUI.getWorkbench();
		try {
			IWorkbenchWizard opened = workbench.getNewWizardRegistry().findWizard(wizard).createWizard();
			opened.init(workbench, StructuredSelection.EMPTY);
			new WizardDialog(HandlerUtil.getActiveShell(event), opened).open();
			return null;
		} catch (CoreException unopened) {
			throw new ExecutionException(wizard, unopened);
		}
	}
}
