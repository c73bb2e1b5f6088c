package padwright.views.map;

/** A key that moves or holds another, by their names. */
public record MapCoupling(String driver, Effect effect, String driven) {

	/** What the driver does to the driven key. */
	public enum Effect {
		CLOSES, OPENS, HOLDS
	}
}
