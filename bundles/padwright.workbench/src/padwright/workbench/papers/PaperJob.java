package padwright.workbench.papers;

import java.util.Locale;

import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.OperationCanceledException;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PartInitException;

import padwright.engine.levelling.Budget;
import padwright.paper.page.PaperSize;
import padwright.workbench.Messages;
import padwright.workbench.session.RowProgress;
import padwright.workbench.session.StatusLine;
import padwright.workup.service.ServicePlan;
import padwright.workup.solve.PlanSolver;
import padwright.workup.solve.WrittenAnswers;

/** Solves a plan and draws a paper of it, in the background; then opens it. */
final class PaperJob extends Job {

	private final PaperKind kind;
	private final ServicePlan plan;
	private final IWorkbenchPage page;

	PaperJob(PaperKind kind, ServicePlan plan, IWorkbenchPage page) {
		super(Messages.get("papers." + kind.name().toLowerCase(Locale.ROOT)));
		this.kind = kind;
		this.plan = plan;
		this.page = page;
	}

	@Override
	protected IStatus run(IProgressMonitor monitor) {
		monitor.beginTask(getName(), plan.jobs().size());
		try {
			Pages pages = kind.draw(
					PlanSolver.solve(plan, WrittenAnswers.KEEP, Budget.unlimited(), new RowProgress(monitor)), usualSize());
			page.getWorkbenchWindow().getShell().getDisplay().asyncExec(() -> open(pages));
			return Status.OK_STATUS;
		} catch (OperationCanceledException cancelled) {
			return Status.CANCEL_STATUS;
		} catch (IllegalArgumentException notDrawable) {
			StatusLine.tell(Messages.get("papers.failed", getName(), notDrawable.getMessage()), true);
			return Status.OK_STATUS;
		}
	}

	/** Letter where that is the usual paper, A4 everywhere else. */
	private static PaperSize usualSize() {
		return switch (Locale.getDefault().getCountry()) {
			case "US", "CA", "MX", "PH", "CL", "CO", "VE" -> PaperSize.LETTER;
			default -> PaperSize.A4;
		};
	}

	private void open(Pages pages) {
		try {
			page.openEditor(new PagesInput(pages), PagesEditor.ID);
		} catch (PartInitException unopened) {
			ILog.of(PaperJob.class).log(unopened.getStatus());
		}
	}
}
