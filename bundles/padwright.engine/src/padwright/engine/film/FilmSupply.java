package padwright.engine.film;

import padwright.engine.length.Length;

/**
 * One thickness of shim film on hand.
 *
 * @param thickness more than zero
 * @param pieces how many blanks are left (a full shim or a partial piece takes one), 0 or more, or {@link #UNLIMITED}
 */
public record FilmSupply(Length thickness, int pieces) {

	public static final int UNLIMITED = Integer.MAX_VALUE;

	/** @throws IllegalArgumentException if the thickness is not positive or the count is negative */
	public FilmSupply {
		if (thickness.signum() <= 0) {
			throw new IllegalArgumentException("film of " + thickness + " is not thicker than nothing");
		}
		if (pieces < 0) {
			throw new IllegalArgumentException(pieces + " blanks of " + thickness + " film cannot be on hand");
		}
	}

	/** As much as is wanted. */
	public static FilmSupply unlimited(Length thickness) {
		return new FilmSupply(thickness, UNLIMITED);
	}
}
