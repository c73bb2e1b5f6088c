package padwright.workbench.help;

import java.text.Normalizer;
import java.text.Normalizer.Form;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import java.util.stream.Stream;

import com.google.gson.JsonArray;
import com.google.gson.JsonParser;

/** Finds words in all sections of the guide, as the search of its pages does in a browser. */
final class GuideSearch {

	/**
	 * What stands below a heading.
	 *
	 * @param target the page, with the anchor of the heading if it has one
	 */
	record Section(String target, String title, String heading, String text) {

		/** The title of the page, and the heading where it is another. */
		String name() {
			return heading.equals(title) ? title : title + ": " + heading;
		}
	}

	private record Worth(Section section, int worth) {
	}

	private static final int MOST = 12;
	private static final int IN_HEADING = 8;
	private static final int IN_TITLE = 4;
	private static final int WORD = 3;
	private static final int BEGINNING = 2;
	private static final int BEFORE = 50;
	private static final int EXCERPT = 160;
	private static final Pattern MARKS = Pattern.compile("\\p{M}+");

	private final List<Section> sections = new ArrayList<>();

	/** @param script that gives the pages their words: a list of rows of page, anchor, title, heading and text */
	GuideSearch(String script) {
		for (var row : JsonParser.parseString(script.substring(script.indexOf('['), script.lastIndexOf(']') + 1)).getAsJsonArray()) {
			JsonArray cells = row.getAsJsonArray();
			String anchor = cells.get(1).getAsString();
			sections.add(new Section(cells.get(0).getAsString() + (anchor.isEmpty() ? "" : "#" + anchor), cells.get(2).getAsString(),
					cells.get(3).getAsString(), cells.get(4).getAsString()));
		}
	}

	/** The sections that have all words that are asked for, the best first; none if nothing is asked for. */
	List<Section> find(String query) {
		List<String> words = words(query);
		return words.isEmpty() ? List.of() : sections.stream().map(section -> new Worth(section, worth(section, words)))
				.filter(found -> found.worth() > 0).sorted(Comparator.comparingInt(Worth::worth).reversed()).limit(MOST)
				.map(Worth::section).toList();
	}

	/** Some words of a section around the first that was asked for. */
	static String excerpt(Section section, String query) {
		String text = section.text();
		String folded = folded(text);
		int first = words(query).stream().mapToInt(folded::indexOf).filter(at -> at >= 0).min().orElse(0);
		int begin = text.lastIndexOf(' ', Math.max(0, Math.min(first, text.length()) - BEFORE)) + 1;
		if (text.length() - begin <= EXCERPT) {
			return text.substring(begin);
		}
		return text.substring(begin, Math.max(begin, text.lastIndexOf(' ', begin + EXCERPT))) + " \u2026";
	}

	private static List<String> words(String query) {
		return Stream.of(folded(query).split("\\s+")).filter(word -> !word.isEmpty()).toList();
	}

	/** Without case and accents. */
	private static String folded(String text) {
		return MARKS.matcher(Normalizer.normalize(text.toLowerCase(Locale.ROOT), Form.NFD)).replaceAll("").replace("\u00df", "ss");
	}

	/** 0 where a word is missing. */
	private static int worth(Section section, List<String> words) {
		int sum = 0;
		for (String word : words) {
			int found = IN_HEADING * weight(folded(section.heading()), word) + IN_TITLE * weight(folded(section.title()), word)
					+ weight(folded(section.text()), word);
			if (found == 0) {
				return 0;
			}
			sum += found;
		}
		return sum;
	}

	/** A whole word counts most, then the beginning of one, then its inside: parts of German words are words. */
	private static int weight(String text, String word) {
		int best = 0;
		for (int at = text.indexOf(word); at >= 0 && best < WORD; at = text.indexOf(word, at + 1)) {
			int end = at + word.length();
			boolean begins = at == 0 || !Character.isLetterOrDigit(text.charAt(at - 1));
			boolean ends = end == text.length() || !Character.isLetterOrDigit(text.charAt(end));
			best = Math.max(best, !begins ? 1 : ends ? WORD : BEGINNING);
		}
		return best;
	}
}
