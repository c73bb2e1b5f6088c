package padwright.paper.card;

/**
 * One coupling to set.
 *
 * @param driver label of the key that drives
 * @param driven label of the key that is closed by it
 * @param found as in {@code 0.5 light at driven}; empty if not tried yet
 * @param remedy as in {@code screw in by 0.06 turn}; may be empty
 * @param done whether the plan says that it is set
 */
public record CardRegulation(String driver, String driven, String found, String remedy, boolean done) {

	/** A coupling that is to be set. */
	public CardRegulation(String driver, String driven, String found, String remedy) {
		this(driver, driven, found, remedy, false);
	}
}
