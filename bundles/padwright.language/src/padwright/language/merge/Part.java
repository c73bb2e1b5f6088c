package padwright.language.merge;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * A piece of a document that is merged as one thing. The pieces of a document, one after the other, are its text to the
 * last blank.
 *
 * @param key what it is, unique among its neighbours: the same in two copies of a document for the same thing
 * @param rank its place in the fixed order of the grammar
 * @param lead blanks and comments before it
 * @param body its text, comments behind it on its last line left out
 * @param tail a comment behind it on its last line
 * @param parts what its body consists of; none for a piece that is merged whole
 * @param block whether its parts stand on lines of their own, so that a conflict can be marked between them
 */
record Part(String key, int rank, String lead, String body, String tail, List<Part> parts, boolean block) {

	private static final String BLANKS_IN_LINE = "[ \\t\\r\\u00A0\\uFEFF]+|(?<=\\n)\\s+";
	private static final String BLANKS = "[\\s\\u00A0\\uFEFF]+";

	Part {
		parts = List.copyOf(parts);
	}

	String text() {
		return lead + body + tail;
	}

	/** The text with every run of blanks as one: what is equal so differs in nothing but layout. */
	String words() {
		return words(text());
	}

	/** A comment goes to the end of its line, so that line ends are no blanks beside one. */
	static String words(String text) {
		return text.strip().replaceAll(text.contains("//") ? BLANKS_IN_LINE : BLANKS, " ");
	}

	/** The parts by their keys, in order. */
	Map<String, Part> byKey() {
		return parts.stream().collect(Collectors.toMap(Part::key, Function.identity(), (one, other) -> one,
				LinkedHashMap::new));
	}
}
