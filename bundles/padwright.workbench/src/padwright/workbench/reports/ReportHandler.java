package padwright.workbench.reports;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.commands.ExecutionException;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.handlers.HandlerUtil;

import padwright.language.shop.ShopFolder;

/** Asks a command about the plan in the editor, or about the shop it belongs to, and shows the answer. */
public final class ReportHandler extends AbstractHandler {

	private static final String COMMAND = "padwright.workbench.report.command";
	private static final String ABOUT = "padwright.workbench.report.about";
	private static final String SHOP = "shop";

	@Override
	public Object execute(ExecutionEvent event) throws ExecutionException {
		IWorkbenchPage page = HandlerUtil.getActiveWorkbenchWindow(event).getActivePage();
		Optional<Path> plan = SavedDocument.in(page);
		if (plan.isPresent()) {
			Path subject = SHOP.equals(event.getParameter(ABOUT)) ? ShopFolder.around(plan.get()) : plan.get();
			Report.show(event.getParameter(COMMAND), subject, List.of(), page);
		}
		return null;
	}
}
