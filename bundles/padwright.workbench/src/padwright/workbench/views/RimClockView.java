package padwright.workbench.views;

import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.swt.widgets.Composite;

import padwright.views.Palette;
import padwright.views.canvas.RimClockControl;
import padwright.views.clock.ClockProposal;
import padwright.views.clock.ClockState;
import padwright.workbench.bench.Bench;
import padwright.workup.service.KeyJob;

/** The rim of the chosen key as a clock: readings, pieces, and what a solve proposes. */
public final class RimClockView extends RowView<RimClockControl, ClockState> {

	public static final String ID = "padwright.workbench.rimClock";

	private Job solving;

	public RimClockView() {
		super(ClockState::of, ClockState.empty(), RimClockControl::show);
	}

	@Override
	protected RimClockControl create(Composite parent, Palette palette, Bench bench) {
		RimClockControl clock = new RimClockControl(parent, palette);
		clock.onEdit(bench::write);
		clock.onGo(bench::choose);
		clock.onSolve(row -> solve(row, clock));
		keyMenuOn(clock.canvas());
		return clock;
	}

	private void solve(KeyJob row, RimClockControl clock) {
		cancelSolving();
		solving = new SolveJob(row, proposal -> propose(proposal, clock));
		solving.schedule();
	}

	private static void propose(ClockProposal proposal, RimClockControl clock) {
		if (!clock.isDisposed()) {
			clock.getDisplay().asyncExec(() -> {
				if (!clock.isDisposed()) {
					clock.propose(proposal);
				}
			});
		}
	}

	private void cancelSolving() {
		if (solving != null) {
			solving.cancel();
		}
	}

	@Override
	protected void setPalette(RimClockControl clock, Palette palette) {
		clock.setPalette(palette);
	}

	@Override
	public void dispose() {
		cancelSolving();
		super.dispose();
	}
}
