package padwright.engine.mechanism;

/**
 * A cup over a hole.
 *
 * @param key the key that it is part of
 * @param isPerforated whether it has an opening, which only a finger closes
 */
public record HoleCup(String key, boolean isPerforated) {

	/** A cup that closes its hole by itself. */
	public static HoleCup plain(String key) {
		return new HoleCup(key, false);
	}

	/** A cup with an opening. */
	public static HoleCup perforated(String key) {
		return new HoleCup(key, true);
	}
}
