package padwright.language.start;

import org.eclipse.xtext.util.Strings;

/** Quoted texts behind a name or a keyword. */
final class Titles {

	private static final boolean KEEP_LETTERS = false;

	private Titles() {
	}

	/** {@code text} in quotes with a blank before it and {@code keyword} before that; nothing for an empty text. */
	static String behind(String keyword, String text) {
		return text.isBlank() ? "" : keyword + " " + quoted(text.strip());
	}

	static String quoted(String text) {
		return '"' + Strings.convertToJavaString(text, KEEP_LETTERS) + '"';
	}
}
