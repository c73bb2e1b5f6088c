package padwright.drawing.svg;

import java.util.regex.Pattern;

/** Text as XML can hold it (XML 1.0, production 2: Char): a writer escapes marks, but not what may not be there. */
final class XmlText {

	private static final Pattern IMPOSSIBLE =
			Pattern.compile("[^\\t\\n\\r\\u0020-\\uD7FF\\uE000-\\uFFFD\\x{10000}-\\x{10FFFF}]");
	private static final String REPLACEMENT = "\uFFFD";

	private XmlText() {
	}

	static String of(String text) {
		return IMPOSSIBLE.matcher(text).replaceAll(REPLACEMENT);
	}
}
