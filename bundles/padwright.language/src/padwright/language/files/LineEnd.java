package padwright.language.files;

/** How the lines of a text end. */
public enum LineEnd {
	LF("\n"), CRLF("\r\n");

	private final String characters;

	LineEnd(String characters) {
		this.characters = characters;
	}

	/** That of most lines of a text; LF where there is but one line. */
	public static LineEnd of(String text) {
		long all = text.chars().filter(character -> character == '\n').count();
		return 2 * count(text, CRLF.characters) > all ? CRLF : LF;
	}

	private static int count(String text, String part) {
		int count = 0;
		for (int at = text.indexOf(part); at >= 0; at = text.indexOf(part, at + part.length())) {
			count++;
		}
		return count;
	}

	/** The characters themselves. */
	public String characters() {
		return characters;
	}

	/** {@code text} with all its lines ended in this way. */
	public String in(String text) {
		String plain = text.replace(CRLF.characters, LF.characters);
		return this == LF ? plain : plain.replace(LF.characters, characters);
	}
}
