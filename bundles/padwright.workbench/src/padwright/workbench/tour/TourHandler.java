package padwright.workbench.tour;

import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;

/** Begins the tour anew. */
public final class TourHandler extends AbstractHandler {

	@Override
	public Object execute(ExecutionEvent event) {
		TourView.begin();
		return null;
	}
}
