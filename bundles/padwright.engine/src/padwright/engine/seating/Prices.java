package padwright.engine.seating;

/**
 * What a shop holds against a change, as a chance that it would give away to be spared it.
 *
 * @param piece of each piece placed or taken out, 0 to 1
 * @param fullShims of a change of the full shims, for which the pad comes out, 0 to 1
 * @param bar the chance of being level already from which on nothing more is done, 0 to 1
 */
public record Prices(double piece, double fullShims, double bar) {

	/** Common practice, no source. */
	public static final Prices USUAL = new Prices(0.02, 0.05, 0.9);

	/** @throws IllegalArgumentException if one is not 0 to 1 */
	public Prices {
		if (!(isShare(piece) && isShare(fullShims) && isShare(bar))) {
			throw new IllegalArgumentException("prices and bar are not 0 to 1: " + piece + ", " + fullShims + ", " + bar);
		}
	}

	/**
	 * The chance from which on no further hour is felt either: a feel costs so much less than a piece that it is worth while
	 * for half of the doubt that a piece is not.
	 */
	public double sure() {
		return (1 + bar) / 2;
	}

	private static boolean isShare(double number) {
		return number >= 0 && number <= 1;
	}
}
