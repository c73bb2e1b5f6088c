package padwright.engine.diagnosis;

/**
 * Who calls a note good or bad.
 *
 * @param threshold the loss of strength in dB at which half of all notes are called bad, more than 0
 * @param spread how far the judgement scatters about it in dB, more than 0: the scale of a logistic curve
 * @param slip how often a note is called the wrong way for no reason, 0 to 0.2
 */
public record Ear(double threshold, double spread, double slip) {

	/**
	 * A change of level by about 1 dB is just noticed (Fastl and Zwicker, Psychoacoustics, 3rd ed. 2007, chapter 7; from
	 * memory). That a player judges a resonance as a listener judges a level is our assumption, the other two figures are
	 * our guess.
	 */
	public static final Ear USUAL = new Ear(1, 0.25, 0.02);

	private static final double MOST_SLIP = 0.2;

	/** @throws IllegalArgumentException if one is out of range */
	public Ear {
		if (!(threshold > 0 && spread > 0 && slip >= 0 && slip <= MOST_SLIP)) {
			throw new IllegalArgumentException("an ear cannot have a threshold of " + threshold + " dB, a spread of "
					+ spread + " dB and slip " + slip);
		}
	}

	/** How likely a note that is weaker by so many dB is called bad. */
	public double chanceBad(double decibels) {
		double heard = 1 / (1 + StrictMath.exp((threshold - decibels) / spread));
		return slip + (1 - 2 * slip) * heard;
	}
}
