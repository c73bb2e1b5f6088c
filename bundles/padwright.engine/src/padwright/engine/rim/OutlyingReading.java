package padwright.engine.rim;

import padwright.engine.length.Length;

/**
 * A reading that the estimated profile cannot agree with.
 *
 * @param reading the reading
 * @param by how far the profile lies outside it, more than zero
 */
public record OutlyingReading(RimReading reading, Length by) {

	/** @throws IllegalArgumentException if {@code by} is not more than zero */
	public OutlyingReading {
		if (by.signum() <= 0) {
			throw new IllegalArgumentException("a contradiction by " + by + " is none");
		}
	}
}
