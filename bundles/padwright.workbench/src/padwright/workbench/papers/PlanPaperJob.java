package padwright.workbench.papers;

import java.util.Locale;

import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.ui.IWorkbenchPage;

import padwright.paper.page.PaperSize;
import padwright.workbench.Messages;
import padwright.workbench.questions.QuoteTerms;
import padwright.workbench.session.RowProgress;
import padwright.workup.service.ServicePlan;
import padwright.workup.solve.PlanSolver;
import padwright.workup.solve.WrittenAnswers;

/** Solves a plan and draws a paper of it. */
final class PlanPaperJob extends PaperJob {

	private final PaperKind kind;
	private final ServicePlan plan;
	private final QuoteTerms terms;

	/** @param terms what a quote charges besides parts */
	PlanPaperJob(PaperKind kind, ServicePlan plan, QuoteTerms terms, IWorkbenchPage page) {
		super(Messages.get("papers." + kind.name().toLowerCase(Locale.ROOT)), page);
		this.kind = kind;
		this.plan = plan;
		this.terms = terms;
	}

	@Override
	protected Pages draw(PaperSize size, IProgressMonitor monitor) {
		monitor.beginTask(getName(), plan.jobs().size());
		return kind.draw(PlanSolver.solve(plan, WrittenAnswers.KEEP, new RowProgress(monitor)),
				size, terms);
	}
}
