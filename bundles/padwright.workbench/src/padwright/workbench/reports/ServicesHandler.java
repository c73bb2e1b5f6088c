package padwright.workbench.reports;

import java.nio.file.Path;
import java.util.List;

import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.commands.ExecutionException;
import org.eclipse.core.resources.IFile;
import org.eclipse.jface.viewers.IStructuredSelection;
import org.eclipse.ui.handlers.HandlerUtil;

import padwright.workbench.Messages;
import padwright.workbench.safe.OnDisk;
import padwright.workbench.session.StatusLine;

/** Tells in trade words what changed between two selected services of one instrument. */
public final class ServicesHandler extends AbstractHandler {

	@Override
	public Object execute(ExecutionEvent event) throws ExecutionException {
		IStructuredSelection selection = HandlerUtil.getCurrentStructuredSelection(event);
		List<Path> plans = selection.stream().filter(IFile.class::isInstance)
				.map(IFile.class::cast).flatMap(file -> OnDisk.path(file).stream()).sorted().toList();
		if (plans.size() == 2) {
			ReportHandler.open(PlanReports.compare(plans.get(0), plans.get(1)),
					HandlerUtil.getActiveWorkbenchWindow(event).getActivePage());
		} else {
			StatusLine.tell(Messages.get("compare.chooseTwo"), true);
		}
		return null;
	}
}
