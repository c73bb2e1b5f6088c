package padwright.workbench.shops;

import java.nio.file.Path;

import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.jface.dialogs.ErrorDialog;
import org.eclipse.swt.widgets.DirectoryDialog;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.ui.handlers.HandlerUtil;

import padwright.workbench.Messages;

/** Opens a shop folder that the user chooses. */
public final class OpenShopHandler extends AbstractHandler {

	@Override
	public Object execute(ExecutionEvent event) {
		Shell shell = HandlerUtil.getActiveShell(event);
		DirectoryDialog dialog = new DirectoryDialog(shell);
		dialog.setText(Messages.get("shop.open"));
		String chosen = dialog.open();
		if (chosen != null) {
			try {
				OpenShops.open(Path.of(chosen), null);
			} catch (CoreException unopened) {
				ErrorDialog.openError(shell, Messages.get("shop.open"), null, unopened.getStatus());
			}
		}
		return null;
	}
}
