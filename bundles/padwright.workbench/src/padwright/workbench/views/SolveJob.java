package padwright.workbench.views;

import java.util.function.Consumer;

import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.OperationCanceledException;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.jobs.Job;

import padwright.views.clock.ClockProposal;
import padwright.workbench.Messages;
import padwright.workbench.session.RowProgress;
import padwright.workup.service.KeyJob;

/** Solves a row in the background; shown with its progress, and can be cancelled there. */
public final class SolveJob extends Job {

	private final KeyJob row;
	private final Consumer<ClockProposal> onSolved;

	/** @param onSolved told of the proposal, in the background */
	public SolveJob(KeyJob row, Consumer<ClockProposal> onSolved) {
		super(Messages.get("bench.solving", row.name()));
		this.row = row;
		this.onSolved = onSolved;
		setUser(false);
	}

	@Override
	protected IStatus run(IProgressMonitor monitor) {
		monitor.beginTask(getName(), row.plan().jobs().size());
		try {
			onSolved.accept(ClockProposal.solve(row, new RowProgress(monitor)));
			return Status.OK_STATUS;
		} catch (OperationCanceledException cancelled) {
			return Status.CANCEL_STATUS;
		}
	}
}
