package padwright.workbench.views;

import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Consumer;
import java.util.function.Function;

import org.eclipse.core.runtime.ICoreRunnable;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.swt.widgets.Display;

/**
 * Answers one wish after the other in the background. Of those that come while one is being answered only the newest
 * counts; each answer is told, so that something moves while wishes come faster than answers.
 *
 * @param <W> what is wished
 * @param <A> its answer
 */
final class NewestWork<W, A> {

	private final AtomicReference<W> newest = new AtomicReference<>();
	private final Job work;
	private final Display display;
	private final Function<W, A> answer;
	private final Consumer<A> onAnswer;

	/**
	 * @param answer asked in the background, of one wish at a time
	 * @param onAnswer told in the window's thread
	 */
	NewestWork(String name, Display display, Function<W, A> answer, Consumer<A> onAnswer) {
		this.display = display;
		this.answer = answer;
		this.onAnswer = onAnswer;
		work = Job.createSystem(name, (ICoreRunnable) monitor -> work());
		work.setPriority(Job.SHORT);
	}

	void wish(W wish) {
		newest.set(wish);
		work.schedule();
	}

	private void work() {
		W wish = newest.getAndSet(null);
		if (wish != null) {
			A found = answer.apply(wish);
			if (!display.isDisposed()) {
				display.asyncExec(() -> onAnswer.accept(found));
			}
		}
	}

	/** No wish is answered any more. */
	void stop() {
		newest.set(null);
		work.cancel();
	}
}
