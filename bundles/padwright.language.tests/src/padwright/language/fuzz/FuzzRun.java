package padwright.language.fuzz;

import java.io.IOException;
import java.util.HashSet;
import java.util.Set;
import java.util.concurrent.atomic.AtomicLong;
import java.util.concurrent.locks.LockSupport;

/** Looks at documents for as long as is wanted: FuzzRun FIRST COUNT. Tells each kind of failure once. */
public final class FuzzRun {

	private static final long LONGEST_MILLIS = 20_000;
	private static final long GLANCE_NANOS = 1_000_000_000;
	private static final int TOLD = 1000;

	private FuzzRun() {
	}

	public static void main(String[] arguments) throws IOException {
		long first = Long.parseLong(arguments[0]);
		long count = Long.parseLong(arguments[1]);
		AtomicLong begun = new AtomicLong(System.currentTimeMillis());
		AtomicLong current = new AtomicLong();
		watch(begun, current);
		Set<String> seen = new HashSet<>();
		FuzzTarget target = new FuzzTarget();
		for (long number = first; number < first + count; number++) {
			begun.set(System.currentTimeMillis());
			current.set(number);
			try {
				target.use(FuzzCase.of(number));
			} catch (RuntimeException | Error failure) {
				tell(number, failure, seen);
			}
			if ((number - first + 1) % TOLD == 0) {
				System.err.printf("%d of %d, %d kinds of failure%n", number - first + 1, count, seen.size());
			}
		}
		System.out.printf("%d documents, %d kinds of failure%n", count, seen.size());
		System.exit(seen.isEmpty() ? 0 : 1);
	}

	private static void tell(long number, Throwable failure, Set<String> seen) {
		StackTraceElement[] stack = failure.getStackTrace();
		String message = String.valueOf(failure.getMessage()).replaceAll("[0-9]+|\"[^\"]*\"", "#");
		if (seen.add(message + (stack.length == 0 ? "" : stack[0] + " " + stack[Math.min(1, stack.length - 1)]))) {
			System.out.println("case " + number + ":\n" + FuzzCase.of(number).text());
			failure.printStackTrace(System.out);
		}
	}

	private static void watch(AtomicLong begun, AtomicLong current) {
		Thread watch = new Thread(() -> {
			while (System.currentTimeMillis() - begun.get() < LONGEST_MILLIS) {
				LockSupport.parkNanos(GLANCE_NANOS);
			}
			System.out.println("case " + current.get() + " hangs:\n" + FuzzCase.of(current.get()).text());
			System.exit(1);
		}, "watch");
		watch.setDaemon(true);
		watch.start();
	}
}
