package padwright.language.formatting2;

import java.util.List;
import java.util.Random;
import java.util.function.UnaryOperator;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;

/** Changes the blanks of a text, but not those inside remarks and texts in quotation marks. */
final class Layouts {

	private static final Pattern REMARK = Pattern.compile("//[^\n]*");
	private static final Pattern PARTS = Pattern
			.compile("(?<kept>//[^\n]*\n?|\"(?:\\\\.|[^\"\\\\])*\")|(?<blank>\\s+)|(?<word>[^\\s\"/]+|/)");

	private Layouts() {
	}

	/** As few blanks as can be; a remark keeps its line end. */
	static String squeezed(String text) {
		return withBlanks(text, blank -> " ");
	}

	/** Every word on a line of its own. */
	static String onePerLine(String text) {
		return withBlanks(text, blank -> "\n");
	}

	/** Blanks as chance will have them. */
	static String scattered(String text, long seed) {
		Random random = new Random(seed);
		List<String> blanks = List.of(" ", "   ", "\t", "\n", "\r\n", "\n\n\n\n", " \n\t ", "\u00A0", "\t\t\n");
		return withBlanks(text, blank -> blanks.get(random.nextInt(blanks.size())));
	}

	private static String withBlanks(String text, UnaryOperator<String> blanks) {
		return PARTS.matcher(text).replaceAll(part -> java.util.regex.Matcher
				.quoteReplacement(part.group(2) == null ? part.group() : blanks.apply(part.group())));
	}

	/** The remarks of a text, in order, without blanks at their ends. */
	static List<String> remarks(String text) {
		return REMARK.matcher(text.replaceAll("\"(?:\\\\.|[^\"\\\\])*\"", "")).results().map(MatchResult::group)
				.map(String::strip).toList();
	}
}
