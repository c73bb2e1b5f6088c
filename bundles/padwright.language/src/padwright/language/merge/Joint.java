package padwright.language.merge;

/** Puts texts together that did not stand together before, so that neither becomes part of the other's words. */
final class Joint {

	private Joint() {
	}

	static String join(String first, String second) {
		if (first.isEmpty() || second.isEmpty() || startsALine(second)) {
			return first + second;
		}
		if (endsInComment(first)) {
			return first + "\n" + second;
		}
		return first + (isWord(first.charAt(first.length() - 1)) && isWord(second.charAt(0)) ? " " : "") + second;
	}

	static boolean startsALine(String text) {
		return text.startsWith("\n") || text.startsWith("\r");
	}

	private static boolean endsInComment(String text) {
		String line = text.substring(text.lastIndexOf('\n') + 1);
		boolean quoted = false;
		for (int at = 0; at < line.length(); at++) {
			if (line.charAt(at) == '\\') {
				at++;
			} else if (line.charAt(at) == '"') {
				quoted = !quoted;
			} else if (!quoted && line.startsWith("//", at)) {
				return true;
			}
		}
		return false;
	}

	private static boolean isWord(char character) {
		return Character.isLetterOrDigit(character) || "._^-\u266D\u266F".indexOf(character) >= 0;
	}
}
