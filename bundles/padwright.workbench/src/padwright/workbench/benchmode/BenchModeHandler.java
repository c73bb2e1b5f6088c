package padwright.workbench.benchmode;

import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.handlers.HandlerUtil;

import padwright.views.bench.KeyOrder;
import padwright.workbench.Messages;
import padwright.workbench.bench.Bench;
import padwright.workbench.session.StatusLine;

/** Fills the screen with the key that is worked on. */
public final class BenchModeHandler extends AbstractHandler {

	@Override
	public Object execute(ExecutionEvent event) {
		IWorkbenchWindow window = HandlerUtil.getActiveWorkbenchWindow(event);
		Bench bench = Bench.of(window);
		bench.shown().plan().filter(plan -> !KeyOrder.of(plan.service()).isEmpty()).ifPresentOrElse(
				plan -> BenchModeWindow.open(window.getShell(), bench, plan),
				() -> StatusLine.tell(Messages.get("benchMode.noPlan"), true));
		return null;
	}
}
