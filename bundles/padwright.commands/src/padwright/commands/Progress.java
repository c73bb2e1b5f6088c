package padwright.commands;

import java.io.PrintWriter;
import java.util.function.LongSupplier;
import java.util.function.Supplier;

/**
 * Tells on the message stream how far long work is, where a person watches it: nothing in the first seconds, then a line
 * now and again.
 */
final class Progress {

	/** True or false: set by the start script, which can tell whether messages go to a terminal, or by who asks for it. */
	private static final String WATCHED = "padwright.progress";
	private static final long PATIENCE_NANOS = 2_000_000_000L;

	private final PrintWriter err;
	private final String doing;
	private final int steps;
	private final boolean isWatched;
	private final LongSupplier clock;
	private int step;
	private long told;

	Progress(PrintWriter err, String doing, int steps) {
		this(err, doing, steps, isWatched(), System::nanoTime);
	}

	/** @param clock in nanoseconds */
	Progress(PrintWriter err, String doing, int steps, boolean isWatched, LongSupplier clock) {
		this.err = err;
		this.doing = doing;
		this.steps = steps;
		this.isWatched = isWatched;
		this.clock = clock;
		this.told = clock.getAsLong();
	}

	private static boolean isWatched() {
		String said = System.getProperty(WATCHED);
		return said == null ? System.console() != null : Boolean.parseBoolean(said);
	}

	/** The next step begins; several threads may say so. */
	void next(String what) {
		next(() -> what);
	}

	/** As {@link #next(String)}, where it takes long to say what. */
	synchronized void next(Supplier<String> what) {
		step++;
		long now = clock.getAsLong();
		if (isWatched && now - told > PATIENCE_NANOS) {
			told = now;
			err.println(doing + " " + step + " of " + steps + ": " + what.get());
			err.flush();
		}
	}

	/** No more steps come. */
	void end() {
		err.flush();
	}

	/** No more steps come, though not all were made. */
	synchronized void stop() {
		err.println("stopped at " + step + " of " + steps + "; what was found so far is not all, and is not listed");
		err.flush();
	}
}
