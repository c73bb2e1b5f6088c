package padwright.workbench.views;

import java.util.Optional;
import java.util.function.BiConsumer;
import java.util.function.Function;

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

	private final Function<KeyJob, S> state;
	private final S empty;
	private final BiConsumer<C, S> display;
	private final Job work = Job.createSystem(Messages.get("bench.reading"), (ICoreRunnable) monitor -> work());
	private volatile Optional<KeyJob> chosen = Optional.empty();

	/**
	 * @param state what is shown of a row; asked in the background
	 * @param empty what is shown where no key is chosen
	 * @param display shows it in the control
	 */
	RowView(Function<KeyJob, S> state, S empty, BiConsumer<C, S> display) {
		this.state = state;
		this.empty = empty;
		this.display = display;
	}

	@Override
	protected final void show(C shown, OnBench onBench) {
		Optional<KeyJob> next = onBench.row();
		// What is typed meanwhile must not be written into the row of another key.
		if (!next.map(KeyJob::name).equals(chosen.map(KeyJob::name))) {
			display.accept(shown, empty);
		}
		chosen = next;
		if (next.isPresent()) {
			work.schedule();
		}
	}

	private void work() {
		Optional<KeyJob> row = chosen;
		row.map(state).ifPresent(worked -> control().getDisplay().asyncExec(() -> {
			if (chosen == row && !control().isDisposed()) {
				display.accept(control(), worked);
			}
		}));
	}

	@Override
	public void dispose() {
		work.cancel();
		super.dispose();
	}
}
