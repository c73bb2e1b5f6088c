package padwright.benchmarks.start;

import java.time.Duration;
import java.time.Instant;
import java.util.concurrent.locks.LockSupport;

import org.eclipse.swt.widgets.Display;
import org.eclipse.ui.IStartup;
import org.eclipse.ui.PlatformUI;

/**
 * Prints how long the window took from the start of the process until it could be used, and closes it. It can be used
 * from when its thread answers at once, several times on end.
 */
public final class UsableProbe implements IStartup {

	private static final Duration AT_ONCE = Duration.ofMillis(20);
	private static final Duration PAUSE = Duration.ofMillis(10);
	private static final int TIMES = 5;

	@Override
	public void earlyStartup() {
		Display display = PlatformUI.getWorkbench().getDisplay();
		Instant usable = Instant.now();
		for (int answered = 0; answered < TIMES; answered++) {
			Instant asked = Instant.now();
			display.syncExec(() -> {
			});
			if (Duration.between(asked, Instant.now()).compareTo(AT_ONCE) > 0) {
				answered = 0;
				usable = Instant.now();
			}
			LockSupport.parkNanos(PAUSE.toNanos());
		}
		Instant started = ProcessHandle.current().info().startInstant().orElseThrow();
		System.out.println("usable after " + Duration.between(started, usable).toMillis() + " ms");
		display.asyncExec(() -> PlatformUI.getWorkbench().close());
	}
}
