package padwright.workbench.views;

import java.util.Optional;

import org.eclipse.core.runtime.ICoreRunnable;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.swt.widgets.Control;

import padwright.workbench.Messages;
import padwright.workbench.bench.OnBench;
import padwright.workup.service.KeyJob;

/**
 * A view of the chosen key. What it shows is worked out in the background; only the newest choice counts.
 *
 * @param <C> the control that draws it
 * @param <S> what it shows of a row
 */
abstract class RowView<C extends Control, S> extends BenchView<C> {

	private final Job work = Job.createSystem(Messages.get("bench.reading"), (ICoreRunnable) monitor -> work());
	private volatile Optional<KeyJob> chosen = Optional.empty();

	/** What is shown of a row; asked in the background. */
	protected abstract S state(KeyJob row);

	/** What is shown where no key is chosen. */
	protected abstract S empty();

	protected abstract void display(C shown, S state);

	@Override
	protected final void show(C shown, OnBench onBench) {
		Optional<KeyJob> next = onBench.row();
		// What is typed meanwhile must not be written into the row of another key.
		if (!next.map(KeyJob::name).equals(chosen.map(KeyJob::name))) {
			display(shown, empty());
		}
		chosen = next;
		if (next.isPresent()) {
			work.schedule();
		}
	}

	private void work() {
		Optional<KeyJob> row = chosen;
		row.map(this::state).ifPresent(state -> control().getDisplay().asyncExec(() -> {
			if (chosen == row && !control().isDisposed()) {
				display(control(), state);
			}
		}));
	}

	@Override
	public void dispose() {
		work.cancel();
		super.dispose();
	}
}
