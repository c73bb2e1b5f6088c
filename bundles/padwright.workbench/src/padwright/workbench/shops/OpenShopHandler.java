package padwright.workbench.shops;

import java.nio.file.Path;

import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.runtime.ICoreRunnable;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.swt.widgets.DirectoryDialog;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.ui.handlers.HandlerUtil;

import padwright.workbench.Messages;
import padwright.workbench.session.OpenShops;

/** Opens a shop folder that the user chooses. */
public final class OpenShopHandler extends AbstractHandler {

	@Override
	public Object execute(ExecutionEvent event) {
		Shell shell = HandlerUtil.getActiveShell(event);
		DirectoryDialog dialog = new DirectoryDialog(shell);
		dialog.setText(Messages.get("shop.open"));
		String chosen = dialog.open();
		if (chosen != null) {
			open(Path.of(chosen));
		}
		return null;
	}

	/** In the background, since a shop may hold many files; what fails is told by the workbench. */
	private static void open(Path folder) {
		Job job = Job.create(Messages.get("shop.open"), (ICoreRunnable) monitor -> OpenShops.open(folder, monitor));
		job.setUser(true);
		job.schedule();
	}
}
