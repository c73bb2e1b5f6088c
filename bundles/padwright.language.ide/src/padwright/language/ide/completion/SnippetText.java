package padwright.language.ide.completion;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A text with stops for its typist, read from the protocol's form for snippets as far as ours use it: each stop with a
 * default, a choice or nothing, none within another.
 *
 * @param text what stands there at first
 * @param stops in the order of the text
 */
public record SnippetText(String text, List<Stop> stops) {

	/**
	 * A place that the typist visits.
	 *
	 * @param number its turn, from 1; those of one number say the same; the last visited is 0
	 * @param offset where it begins in the text
	 * @param length of what stands in it at first
	 * @param choice what can stand in it, if that is known
	 */
	public record Stop(int number, int offset, int length, List<String> choice) {
	}

	/** The number of the stop where the typist ends. */
	public static final int LAST = 0;

	private static final Pattern STOP = Pattern.compile("\\$(\\d+)|\\$\\{(\\d+)(?::([^}]*)|\\|([^|]*)\\|)?}");
	private static final int BARE = 1;
	private static final int NUMBER = 2;
	private static final int DEFAULT = 3;
	private static final int CHOICE = 4;

	/** Reads a snippet. */
	public static SnippetText of(String snippet) {
		StringBuilder text = new StringBuilder();
		List<Stop> stops = new ArrayList<>();
		Map<Integer, String> said = new HashMap<>();
		Matcher stop = STOP.matcher(snippet);
		while (stop.find()) {
			stop.appendReplacement(text, "");
			int number = Integer.parseInt(stop.group(stop.group(BARE) == null ? NUMBER : BARE));
			List<String> choice = stop.group(CHOICE) == null ? List.of() : List.of(stop.group(CHOICE).split(","));
			said.putIfAbsent(number, first(stop, choice));
			stops.add(new Stop(number, text.length(), said.get(number).length(), choice));
			text.append(said.get(number));
		}
		return new SnippetText(stop.appendTail(text).toString(), stops);
	}

	private static String first(MatchResult stop, List<String> choice) {
		if (!choice.isEmpty()) {
			return choice.get(0);
		}
		return stop.group(DEFAULT) == null ? "" : stop.group(DEFAULT);
	}
}
