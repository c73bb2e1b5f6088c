package padwright.workbench.views;

import java.util.function.Consumer;

import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.OperationCanceledException;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.jobs.Job;

import padwright.views.regulate.RegulationState;
import padwright.workbench.Messages;
import padwright.workbench.session.RowProgress;
import padwright.workup.service.ServicePlan;
import padwright.workup.solve.PlanSolver;
import padwright.workup.solve.WrittenAnswers;

/** Predicts what the answers of a plan do to its couplings, in the background. */
final class RegulationJob extends Job {

	private final ServicePlan plan;
	private final Consumer<RegulationState> onFound;

	/** @param onFound told what was found, in the background */
	RegulationJob(ServicePlan plan, Consumer<RegulationState> onFound) {
		super(Messages.get("bench.regulation"));
		this.plan = plan;
		this.onFound = onFound;
		setPriority(DECORATE);
	}

	@Override
	protected IStatus run(IProgressMonitor monitor) {
		monitor.beginTask(getName(), plan.jobs().size());
		try {
			onFound.accept(RegulationState.of(PlanSolver.solve(plan, WrittenAnswers.KEEP, new RowProgress(monitor))));
			return Status.OK_STATUS;
		} catch (OperationCanceledException cancelled) {
			return Status.CANCEL_STATUS;
		}
	}
}
