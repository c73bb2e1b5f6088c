package padwright.workbench.commands;

import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.ui.handlers.HandlerUtil;

import padwright.workbench.bench.Bench;

/** Goes from a view into the text of the chosen key's row. */
public final class ToTextHandler extends AbstractHandler {

	@Override
	public Object execute(ExecutionEvent event) {
		Bench bench = Bench.of(HandlerUtil.getActiveWorkbenchWindow(event));
		bench.shown().key().ifPresent(bench::open);
		return null;
	}
}
