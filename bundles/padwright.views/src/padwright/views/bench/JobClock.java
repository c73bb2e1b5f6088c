package padwright.views.bench;

import java.time.Duration;
import java.util.function.LongSupplier;

/** How long a job is under way, without the pauses. It runs from the start. */
public final class JobClock {

	private static final int SIXTY = 60;

	private final LongSupplier nanos;
	private long before;
	private long since;
	private boolean running = true;

	/** @param nanos the time, from any beginning */
	public JobClock(LongSupplier nanos) {
		this.nanos = nanos;
		since = nanos.getAsLong();
	}

	/** Stands still, or goes on. */
	public void toggle() {
		before = elapsed().toNanos();
		since = nanos.getAsLong();
		running = !running;
	}

	public boolean isRunning() {
		return running;
	}

	public Duration elapsed() {
		return Duration.ofNanos(before + (running ? nanos.getAsLong() - since : 0));
	}

	/** Minutes and seconds, with hours where there are any, as in {@code 1:02:07}. */
	public String shown() {
		Duration time = elapsed();
		return time.toHours() == 0 ? String.format("%d:%02d", time.toMinutes(), time.toSecondsPart())
				: String.format("%d:%02d:%02d", time.toHours(), time.toMinutes() % SIXTY, time.toSecondsPart());
	}
}
