package padwright.engine.evidence;

/**
 * How true rim and cup are. The deviations that belong to each are bench estimates, unverified: they say how far the
 * clearance under a pad that was brought to height still goes up and down.
 */
public enum RimCondition {

	/** Soldered tone holes, finished flat, under a true cup. */
	TRUE(RimPrior.ofThou("0.5", "0.22", "0.05", "0.025", "0.015", "0.01")),
	/** Drawn tone holes. */
	DRAWN(RimPrior.ofThou("0.6", "0.3", "0.07", "0.035", "0.02", "0.015")),
	/** A rim with a nick, or a warped cup. */
	ROUGH(RimPrior.ofThou("0.8", "0.45", "0.12", "0.06", "0.035", "0.025"));

	private final RimPrior prior;

	RimCondition(RimPrior prior) {
		this.prior = prior;
	}

	RimPrior prior() {
		return prior;
	}
}
