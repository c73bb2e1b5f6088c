package padwright.views.layout;

/**
 * What moves a key: another key, or a touch that presses it.
 *
 * @param from id of the item that moves it
 * @param to id of the key, or hole, that is moved or covered
 */
public record LayoutLink(String from, String to, Kind kind) {

	/** What one does to the other. */
	public enum Kind {
		CLOSES, OPENS, HOLDS, PRESSES
	}
}
