package padwright.engine.acoustics;

import padwright.engine.length.Length;

/**
 * How far a dimension may go.
 *
 * @param least in m
 * @param most in m, more than the least
 */
public record Limits(double least, double most) {

	/** @throws IllegalArgumentException if they leave no room */
	public Limits {
		if (!(least < most)) {
			throw new IllegalArgumentException("limits of " + least + " and " + most + " m leave no room");
		}
	}

	public static Limits of(Length least, Length most) {
		return new Limits(Sizes.metres(least), Sizes.metres(most));
	}

	/** The size, or the limit that it lies beyond. */
	double within(double size) {
		return Math.min(most, Math.max(least, size));
	}
}
