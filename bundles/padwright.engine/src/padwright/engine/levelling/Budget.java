package padwright.engine.levelling;

import java.time.Duration;

/**
 * How long a search may take. An answer ended by the count of nodes is the same on every machine; one ended by the
 * clock need not be.
 *
 * @param nodes sets of pieces looked into, more than 0
 * @param time more than 0
 */
public record Budget(long nodes, Duration time) {

	private static final Duration ENDLESS = Duration.ofDays(36_500);

	/** @throws IllegalArgumentException if either is not more than 0 */
	public Budget {
		if (nodes <= 0 || time.isNegative() || time.isZero()) {
			throw new IllegalArgumentException("a search of " + nodes + " nodes in " + time + " cannot begin");
		}
	}

	/** Until the answer is proved. */
	public static Budget unlimited() {
		return new Budget(Long.MAX_VALUE, ENDLESS);
	}

	public static Budget ofNodes(long nodes) {
		return new Budget(nodes, ENDLESS);
	}

	public static Budget ofTime(Duration time) {
		return new Budget(Long.MAX_VALUE, time);
	}
}
