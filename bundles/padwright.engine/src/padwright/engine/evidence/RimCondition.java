package padwright.engine.evidence;

/**
 * How true rim and cup are. The deviations that belong to each are bench estimates, unverified: they say how far the
 * clearance under a pad that was brought to height still goes up and down.
 */
public enum RimCondition {

	/** Soldered tone holes, finished flat, under a true cup. */
	TRUE(RimPrior.ofThou("0.45", "0.2", "0.035", "0.015", "0.01", "0.005")),
	/** Drawn tone holes. */
	DRAWN(RimPrior.ofThou("0.55", "0.28", "0.06", "0.03", "0.02", "0.01")),
	/** A rim with a nick, or a warped cup. */
	ROUGH(RimPrior.ofThou("0.75", "0.42", "0.1", "0.05", "0.03", "0.02"));

	private final RimPrior prior;

	RimCondition(RimPrior prior) {
		this.prior = prior;
	}

	RimPrior prior() {
		return prior;
	}
}
