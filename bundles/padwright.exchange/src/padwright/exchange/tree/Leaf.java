package padwright.exchange.tree;

/**
 * One value.
 *
 * @param text   of a string, number or truth value
 * @param syntax how it was written
 */
public record Leaf(String text, Syntax syntax, int line) implements Tree {

	/** How a value is written. */
	public enum Syntax {
		STRING("a text"), NUMBER("a number"), TRUTH("true or false"), CELL("a cell");

		private final String words;

		Syntax(String words) {
			this.words = words;
		}
	}

	/** What a cell says where a part stands that has nothing in it. */
	public static final String EMPTY_PART = "{}";

	/** A string that was not read from a file. */
	public static Leaf string(String text) {
		return new Leaf(text, Syntax.STRING, 0);
	}

	@Override
	public String kind() {
		return syntax.words;
	}
}
