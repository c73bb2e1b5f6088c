package padwright.engine.rim;

import padwright.engine.length.Length;

/**
 * A reading that the estimated profile cannot agree with.
 *
 * @param reading the reading
 * @param by how far the profile lies outside it, more than zero
 */
public record Contradiction(RimReading reading, Length by) {

	/** @throws IllegalArgumentException if {@code by} is not more than zero */
	public Contradiction {
		if (by.signum() <= 0) {
			throw new IllegalArgumentException("a contradiction by " + by + " is none");
		}
	}
}
