package padwright.workbench.shops;

import java.nio.file.Path;

import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.DirectoryDialog;
import org.eclipse.ui.handlers.HandlerUtil;

import padwright.workbench.Messages;

/** Opens the example shop: where it usually is, or in a folder that the user chooses. */
public final class ExampleShopHandler extends AbstractHandler {

	private static final String CHOOSE = "padwright.workbench.exampleShop.choose";

	@Override
	public Object execute(ExecutionEvent event) {
		if (event.getParameter(CHOOSE) == null) {
			ExampleShop.open(ExampleShop.usualFolder());
			return null;
		}
		DirectoryDialog dialog = new DirectoryDialog(HandlerUtil.getActiveShell(event), SWT.SAVE);
		dialog.setText(Messages.get("example.title"));
		dialog.setMessage(Messages.get("example.choose"));
		String chosen = dialog.open();
		if (chosen != null) {
			ExampleShop.open(Path.of(chosen));
		}
		return null;
	}
}
