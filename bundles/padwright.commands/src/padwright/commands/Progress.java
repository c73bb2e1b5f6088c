package padwright.commands;

import java.io.PrintWriter;
import java.util.function.Supplier;

/** Tells on the message stream how far long work is: nothing in the first seconds, then a line now and again. */
final class Progress {

	private static final long PATIENCE_NANOS = 2_000_000_000L;

	private final PrintWriter err;
	private final String doing;
	private final int steps;
	private int step;
	private long told = System.nanoTime();

	Progress(PrintWriter err, String doing, int steps) {
		this.err = err;
		this.doing = doing;
		this.steps = steps;
	}

	/** The next step begins; several threads may say so. */
	void next(String what) {
		next(() -> what);
	}

	/** As {@link #next(String)}, where it takes long to say what. */
	synchronized void next(Supplier<String> what) {
		step++;
		if (System.nanoTime() - told > PATIENCE_NANOS) {
			told = System.nanoTime();
			err.println(doing + " " + step + " of " + steps + ": " + what.get());
			err.flush();
		}
	}

	/** All is done. */
	void end() {
		err.flush();
	}
}
