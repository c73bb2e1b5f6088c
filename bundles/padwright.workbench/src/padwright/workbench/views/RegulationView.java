package padwright.workbench.views;

import java.util.Optional;

import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.ui.IMemento;
import org.eclipse.ui.IViewSite;
import org.eclipse.ui.PartInitException;

import padwright.views.Palette;
import padwright.views.regulate.Progress;
import padwright.views.regulate.RegulationState;
import padwright.views.table.RegulationList;
import padwright.workbench.bench.Bench;
import padwright.workbench.bench.OnBench;
import padwright.workbench.bench.PlanOnBench;

/** The couplings in the order of work. What is ticked off is remembered for each plan. */
public final class RegulationView extends BenchView<RegulationList> {

	public static final String ID = "padwright.workbench.regulation";

	private final DoneWork done = new DoneWork();
	private Optional<PlanOnBench> shown = Optional.empty();
	private RegulationState state = RegulationState.empty();
	private Optional<Job> job = Optional.empty();

	@Override
	public void init(IViewSite site, IMemento memento) throws PartInitException {
		super.init(site, memento);
		done.restore(memento);
	}

	@Override
	public void saveState(IMemento memento) {
		done.save(memento);
	}

	@Override
	protected RegulationList create(Composite parent, Palette palette, Bench bench) {
		RegulationList list = new RegulationList(parent, palette);
		list.onSelect(bench::choose);
		list.onTick(progress -> shown.ifPresent(plan -> done.put(plan.uri(), progress)));
		return list;
	}

	@Override
	protected void show(RegulationList list, OnBench onBench) {
		if (onBench.plan().equals(shown)) {
			display(list, onBench);
			return;
		}
		shown = onBench.plan();
		job.ifPresent(Job::cancel);
		job = shown.map(plan -> new RegulationJob(plan.service(), found -> list.getDisplay().asyncExec(() -> {
			if (!list.isDisposed() && shown.equals(Optional.of(plan))) {
				state = found;
				display(list, bench().shown());
			}
		})));
		job.ifPresentOrElse(Job::schedule, () -> {
			state = RegulationState.empty();
			display(list, onBench);
		});
	}

	private void display(RegulationList list, OnBench onBench) {
		list.show(state, shown.map(plan -> done.of(plan.uri())).orElse(Progress.none()), onBench.key());
	}

	@Override
	protected void setPalette(RegulationList list, Palette palette) {
		list.setPalette(palette);
	}

	@Override
	public void dispose() {
		job.ifPresent(Job::cancel);
		super.dispose();
	}
}
