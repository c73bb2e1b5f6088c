package padwright.workbench.views;

import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;

import org.eclipse.core.runtime.ICoreRunnable;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.swt.widgets.Display;

import padwright.workbench.Messages;
import padwright.workup.service.KeyJob;

/**
 * Works out in the background what is shown of a row; only the newest row counts.
 *
 * @param <S> what is shown
 */
public final class RowWork<S> {

	private final Job work = Job.createSystem(Messages.get("bench.reading"), (ICoreRunnable) monitor -> work());
	private final Display display;
	private final Function<KeyJob, S> state;
	private final Consumer<S> onWorked;
	private volatile Optional<KeyJob> chosen = Optional.empty();

	/**
	 * @param state what is shown of a row; asked in the background
	 * @param onWorked told of it in the window's thread
	 */
	public RowWork(Display display, Function<KeyJob, S> state, Consumer<S> onWorked) {
		this.display = display;
		this.state = state;
		this.onWorked = onWorked;
	}

	/** The row that was chosen last. */
	public Optional<KeyJob> row() {
		return chosen;
	}

	/** Works on a row from now on, or on none. */
	public void choose(Optional<KeyJob> row) {
		chosen = row;
		if (row.isPresent()) {
			work.schedule();
		}
	}

	private void work() {
		Optional<KeyJob> row = chosen;
		row.map(state).filter(worked -> !display.isDisposed()).ifPresent(worked -> display.asyncExec(() -> {
			if (chosen == row) {
				onWorked.accept(worked);
			}
		}));
	}

	/** Nothing is told any more. */
	public void stop() {
		chosen = Optional.empty();
		work.cancel();
	}
}
