package padwright.language.parser;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;

import padwright.language.merge.ConflictMarks;

/** Passes over what a merge left for a person to decide, but for the first of the texts to choose from. */
final class ConflictPassages {

	private static final String BEGIN = "Two edits go against each other here: keep one of the two texts, the one up to "
			+ "======= or the one up to >>>>>>>, and take the lines of marks away.";
	private static final String OTHER = "This is the other of two texts to choose from; it was not looked at.";
	private static final String STRAY = "This line is a mark of a merge that was not brought to an end; take it away.";

	private ConflictPassages() {
	}

	static List<Passage> in(String text) {
		List<Passage> passages = new ArrayList<>();
		Matcher mark = ConflictMarks.MARK.matcher(text);
		int other = -1;
		while (mark.find()) {
			char kind = text.charAt(mark.start());
			if (kind == '>' && other >= 0) {
				passages.add(new Passage(other, mark.end(), OTHER));
				other = -1;
			} else if (other < 0 && (kind == '=' || kind == '|')) {
				other = mark.start();
			} else if (other < 0) {
				passages.add(new Passage(mark.start(), mark.end(), kind == '<' ? BEGIN : STRAY));
			}
		}
		if (other >= 0) {
			passages.add(new Passage(other, text.stripTrailing().length(), STRAY));
		}
		return passages;
	}
}
