package padwright.commands;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.concurrent.atomic.AtomicLong;

import org.junit.jupiter.api.Test;

class ProgressTest {

	private static final long SECOND = 1_000_000_000L;

	private final AtomicLong clock = new AtomicLong(-SECOND);
	private final StringWriter messages = new StringWriter();

	private Progress progress(boolean isWatched) {
		return new Progress(new PrintWriter(messages), "checking", 9, isWatched, clock::get);
	}

	private void threeSteps(Progress progress) {
		for (String step : new String[] { "a", "b", "c" }) {
			clock.addAndGet(3 * SECOND / 2);
			progress.next(step);
		}
		progress.end();
	}

	@Test
	void tellsAPersonNowAndAgain() {
		threeSteps(progress(true));
		assertEquals("checking 2 of 9: b", messages.toString().strip());
	}

	@Test
	void writesNothingIntoAPipe() {
		threeSteps(progress(false));
		assertEquals("", messages.toString());
	}

	@Test
	void tellsEverybodyThatItWasStopped() {
		Progress progress = progress(false);
		progress.next("a");
		progress.stop();
		assertTrue(messages.toString().startsWith("stopped at 1 of 9"), messages.toString());
	}
}
