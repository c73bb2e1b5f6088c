package padwright.language.ide.completion;

import java.util.HashMap;
import java.util.Map;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The protocol's form for snippets, as far as ours use it: stops, with a default or a choice, not within each other. */
public final class SnippetText {

	private static final Pattern STOP = Pattern.compile("\\$(\\d+)|\\$\\{(\\d+)(?::([^}]*)|\\|([^|]*)\\|)?}");
	private static final int BARE = 1;
	private static final int NUMBER = 2;
	private static final int DEFAULT = 3;
	private static final int CHOICE = 4;

	private SnippetText() {
	}

	/** The text without stops: each with what stands in it first, and with that again wherever it comes again. */
	public static String plain(String snippet) {
		Map<String, String> said = new HashMap<>();
		return STOP.matcher(snippet).replaceAll(stop -> Matcher.quoteReplacement(
				said.merge(stop.group(BARE) == null ? stop.group(NUMBER) : stop.group(BARE), first(stop),
						(before, now) -> before)));
	}

	private static String first(MatchResult stop) {
		if (stop.group(CHOICE) != null) {
			return stop.group(CHOICE).split(",", 2)[0];
		}
		return stop.group(DEFAULT) == null ? "" : stop.group(DEFAULT);
	}
}
