package padwright.workbench.commands;

import java.util.List;

import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.OperationCanceledException;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.ui.handlers.HandlerUtil;

import padwright.language.edit.SolutionEdits;
import padwright.language.edit.TextEdit;
import padwright.workbench.Messages;
import padwright.workbench.bench.Bench;
import padwright.workbench.bench.PlanOnBench;
import padwright.workbench.session.RowProgress;
import padwright.workbench.session.StatusLine;
import padwright.workup.solve.PlanSolver;
import padwright.workup.solve.WrittenAnswers;

/** Solves every key of the plan that has no answer yet, and writes the answers as one step of undo. */
public final class SolvePlanHandler extends AbstractHandler {

	@Override
	public Object execute(ExecutionEvent event) {
		Bench bench = Bench.of(HandlerUtil.getActiveWorkbenchWindow(event));
		bench.shown().plan().ifPresentOrElse(plan -> new SolvePlan(plan, bench).schedule(),
				() -> StatusLine.tell(Messages.get("papers.noPlan"), true));
		return null;
	}

	private static final class SolvePlan extends Job {

		private final PlanOnBench plan;
		private final Bench bench;

		SolvePlan(PlanOnBench plan, Bench bench) {
			super(Messages.get("solve.plan"));
			this.plan = plan;
			this.bench = bench;
			setUser(true);
		}

		@Override
		protected IStatus run(IProgressMonitor monitor) {
			monitor.beginTask(getName(), plan.service().jobs().size());
			try {
				List<TextEdit> edits = SolutionEdits.of(PlanSolver.solve(plan.service(), WrittenAnswers.KEEP,
						new RowProgress(monitor)), WrittenAnswers.KEEP);
				bench.writeLater(edits);
				StatusLine.tell(Messages.get("solve.written", edits.size()), false);
				return Status.OK_STATUS;
			} catch (OperationCanceledException cancelled) {
				return Status.CANCEL_STATUS;
			}
		}
	}
}
