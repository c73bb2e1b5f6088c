package padwright.engine.learning;

/**
 * A life of which only a bracket is known: it was whole at {@code from} and had failed at {@code to}.
 *
 * @param from 0 or more
 * @param to more than {@code from}; infinite where it was never found failed
 */
public record LifeBracket(double from, double to) {

	/** @throws IllegalArgumentException if nothing lies between */
	public LifeBracket {
		if (!(from >= 0 && from < Double.POSITIVE_INFINITY && to > from)) {
			throw new IllegalArgumentException("no life lies between " + from + " and " + to);
		}
	}

	/** Whether it was found failed. */
	public boolean isFailed() {
		return to < Double.POSITIVE_INFINITY;
	}
}
