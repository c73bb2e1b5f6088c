package padwright.engine.diagnosis;

/**
 * How far to look for suspects.
 *
 * @param pads most pads in one set, 1 to 12
 * @param sets most sets to report, 1 to 10 000
 */
public record SearchLimits(int pads, int sets) {

	/** Up to four leaking pads at once, the fifty likeliest sets. */
	public static final SearchLimits USUAL = new SearchLimits(4, 50);

	/** @throws IllegalArgumentException if either is out of range */
	public SearchLimits {
		if (pads < 1 || pads > 12 || sets < 1 || sets > 10_000) {
			throw new IllegalArgumentException("cannot look for " + sets + " sets of up to " + pads
					+ " pads: 1 to 10 000 sets of 1 to 12 pads");
		}
	}
}
