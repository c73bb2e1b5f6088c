package padwright.engine.calibration;

/**
 * A number known to lie between bounds.
 *
 * @param low may be minus infinity
 * @param high {@code low} or more, may be infinity
 */
record Interval(double low, double high) {

	Interval {
		if (!(low <= high)) {
			throw new IllegalArgumentException("nothing lies between " + low + " and " + high);
		}
	}

	Interval minus(double offset) {
		return new Interval(low - offset, high - offset);
	}

	/** How far a number is outside; zero inside. */
	double distanceFrom(double number) {
		return Math.max(0, Math.max(low - number, number - high));
	}
}
