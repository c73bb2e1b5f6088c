package padwright.workbench.commands;

import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.commands.ExecutionException;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.handlers.HandlerUtil;

import padwright.workbench.views.RimClockView;

/** Opens the rim clock of the chosen key, which takes what is typed next. */
public final class ToClockHandler extends AbstractHandler {

	@Override
	public Object execute(ExecutionEvent event) throws ExecutionException {
		try {
			HandlerUtil.getActiveWorkbenchWindow(event).getActivePage().showView(RimClockView.ID);
			return null;
		} catch (PartInitException unopened) {
			throw new ExecutionException(unopened.getMessage(), unopened);
		}
	}
}
