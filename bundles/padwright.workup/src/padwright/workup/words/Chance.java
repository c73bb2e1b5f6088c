package padwright.workup.words;

/** Probabilities in whole per cent: none that is told from a sample of readings is known finer. */
public final class Chance {

	private static final double LEAST = 0.01;

	private Chance() {
	}

	/** For example {@code 40 %}; never nothing or all. */
	public static String of(double share) {
		return share < LEAST ? Messages.of("chance.under") : share > 1 - LEAST ? Messages.of("chance.over")
				: Math.round(100 * share) + " %";
	}
}
