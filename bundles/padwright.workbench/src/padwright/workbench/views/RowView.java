package padwright.workbench.views;

import java.util.Optional;
import java.util.function.BiConsumer;
import java.util.function.Function;

import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;

import padwright.workbench.bench.OnBench;
import padwright.workup.service.KeyJob;

/**
 * A view of the chosen key. What it shows is worked out in the background; only the newest choice counts.
 *
 * @param <C> the control that draws it
 * @param <S> what it shows of a row
 */
abstract class RowView<C extends Control, S> extends BenchView<C> {

	private final S empty;
	private final BiConsumer<C, S> display;
	private final RowWork<S> work;

	/**
	 * @param state what is shown of a row; asked in the background
	 * @param empty what is shown where no key is chosen
	 * @param display shows it in the control
	 */
	RowView(Function<KeyJob, S> state, S empty, BiConsumer<C, S> display) {
		this.empty = empty;
		this.display = display;
		this.work = new RowWork<>(Display.getDefault(), state, worked -> {
			if (!control().isDisposed()) {
				display.accept(control(), worked);
			}
		});
	}

	@Override
	protected final void show(C shown, OnBench onBench) {
		Optional<KeyJob> next = onBench.row();
		// What is typed meanwhile must not be written into the row of another key.
		if (!next.map(KeyJob::name).equals(work.row().map(KeyJob::name))) {
			display.accept(shown, empty);
		}
		work.choose(next);
	}

	@Override
	public void dispose() {
		work.stop();
		super.dispose();
	}
}
