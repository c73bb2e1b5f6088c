package padwright.workbench.board;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.function.Consumer;

import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.jobs.Job;

import padwright.workbench.Messages;
import padwright.workbench.reports.ShopPlan;
import padwright.workup.next.NextSteps;
import padwright.workup.service.ServicePlan;

/** Reads all plans of a shop in the background; only the newest wish counts. A large shop is read less often. */
final class BoardReading extends Job {

	private static final long LEAST_PAUSE = 300;
	/** The pause before a shop is read again, as a multiple of what it took last. */
	private static final long PAUSES = 3;

	private final Consumer<NextSteps> onRead;
	private volatile Path shop;
	private volatile LocalDate day;
	private volatile long pause;

	/** @param onRead told, in a background thread, of what is next */
	BoardReading(Consumer<NextSteps> onRead) {
		super(Messages.get("board.reading"));
		this.onRead = onRead;
		setSystem(true);
		setPriority(DECORATE);
	}

	void start(Path folder, LocalDate on) {
		shop = folder;
		day = on;
		schedule(pause);
	}

	@Override
	protected IStatus run(IProgressMonitor monitor) {
		long begun = System.currentTimeMillis();
		try {
			onRead.accept(NextSteps.of(ShopPlan.in(shop).stream().map(plan -> new ServicePlan(plan.plan())).toList(), day));
		} catch (IllegalArgumentException unreadable) {
			return Status.OK_STATUS;
		} finally {
			pause = Math.max(LEAST_PAUSE, PAUSES * (System.currentTimeMillis() - begun));
		}
		return Status.OK_STATUS;
	}
}
