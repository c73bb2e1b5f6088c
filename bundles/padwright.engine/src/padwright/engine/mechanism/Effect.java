package padwright.engine.mechanism;

/** What one key does to another while it is away from its rest. */
public enum Effect {
	CLOSES, OPENS,
	/** Keeps it shut whatever opens it; closes it if it stands open. */
	HOLDS;

	/** The state into which it brings a key. */
	public Rest target() {
		return this == OPENS ? Rest.OPEN : Rest.CLOSED;
	}
}
