package padwright.workbench.papers;

import java.util.Locale;

import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.handlers.HandlerUtil;

import padwright.workbench.Messages;
import padwright.workbench.bench.Bench;
import padwright.workbench.session.StatusLine;

/** Draws a paper of the plan on the bench and shows it. */
public final class PaperHandler extends AbstractHandler {

	private static final String KIND = "padwright.workbench.paper.kind";

	@Override
	public Object execute(ExecutionEvent event) {
		IWorkbenchWindow window = HandlerUtil.getActiveWorkbenchWindow(event);
		PaperKind kind = PaperKind.valueOf(event.getParameter(KIND).toUpperCase(Locale.ROOT));
		Bench.of(window).shown().plan().ifPresentOrElse(
				plan -> new PaperJob(kind, plan.service(), window.getActivePage()).schedule(),
				() -> StatusLine.tell(Messages.get("papers.noPlan"), true));
		return null;
	}
}
