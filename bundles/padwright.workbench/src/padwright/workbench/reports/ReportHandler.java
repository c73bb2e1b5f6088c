package padwright.workbench.reports;

import java.nio.file.Path;
import java.util.Optional;

import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.commands.ExecutionException;
import org.eclipse.core.resources.IFile;
import org.eclipse.core.runtime.ICoreRunnable;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.handlers.HandlerUtil;

import padwright.language.shop.ShopFolder;
import padwright.workbench.Messages;
import padwright.workbench.editor.PlanEditor;
import padwright.workbench.session.Documents;
import padwright.workbench.session.StatusLine;

/** Asks a command about the plan in the editor, or about the shop it belongs to, and shows the answer. */
public final class ReportHandler extends AbstractHandler {

	private static final String COMMAND = "padwright.workbench.report.command";
	private static final String ABOUT = "padwright.workbench.report.about";
	private static final String SHOP = "shop";

	@Override
	public Object execute(ExecutionEvent event) throws ExecutionException {
		IWorkbenchPage page = HandlerUtil.getActiveWorkbenchWindow(event).getActivePage();
		Optional<Path> plan = page.getActiveEditor() instanceof PlanEditor editor && saved(editor, page)
				? Documents.path(editor.getEditorInput().getAdapter(IFile.class)) : Optional.empty();
		if (plan.isEmpty()) {
			StatusLine.tell(Messages.get("papers.noPlan"), true);
			return null;
		}
		Path subject = SHOP.equals(event.getParameter(ABOUT)) ? ShopFolder.around(plan.get()) : plan.get();
		try {
			start(event.getParameter(COMMAND), subject, (ReportView) page.showView(ReportView.ID));
		} catch (PartInitException unopened) {
			throw new ExecutionException(unopened.getMessage(), unopened);
		}
		return null;
	}

	/** A report is on what is saved: the user may save first. */
	private static boolean saved(PlanEditor editor, IWorkbenchPage page) {
		return !editor.isDirty() || page.saveEditor(editor, true) && !editor.isDirty();
	}

	private static void start(String command, Path subject, ReportView view) {
		Job job = Job.create(Messages.get("report.job", command), (ICoreRunnable) monitor -> {
			Report report = Report.of(command, subject);
			view.getSite().getShell().getDisplay().asyncExec(() -> view.show(report));
		});
		job.schedule();
	}
}
