package padwright.exchange.tree;

import java.util.List;
import java.util.regex.Pattern;

/** Several values in one cell: with blanks between them, in quotation marks where they have blanks inside. */
public final class Words {

	private static final String QUOTE = "\"";
	private static final Pattern WORD = Pattern.compile("\"[^\"]*\"|\\S+");

	private Words() {
	}

	public static String joined(List<String> values) {
		return String.join(" ", values.stream().map(value -> value.contains(" ") ? QUOTE + value + QUOTE : value).toList());
	}

	static List<String> split(String text) {
		return WORD.matcher(text).results().map(word -> word.group().replace(QUOTE, "")).toList();
	}
}
