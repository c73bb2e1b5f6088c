package padwright.language.parser;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;

import padwright.language.merge.ConflictMarks;
import padwright.language.messages.Messages;

/** Passes over what a merge left for a person to decide, but for the first of the texts to choose from. */
final class ConflictPassages {



	private ConflictPassages() {
	}

	static List<Passage> in(String text) {
		List<Passage> passages = new ArrayList<>();
		Matcher mark = ConflictMarks.MARK.matcher(text);
		int other = -1;
		while (mark.find()) {
			char kind = text.charAt(mark.start());
			if (kind == '>' && other >= 0) {
				passages.add(new Passage(other, mark.end(), Messages.of("conflict.other")));
				other = -1;
			} else if (other < 0 && (kind == '=' || kind == '|')) {
				other = mark.start();
			} else if (other < 0) {
				passages.add(new Passage(mark.start(), mark.end(),
						kind == '<' ? Messages.of("conflict.begin") : Messages.of("conflict.stray")));
			}
		}
		if (other >= 0) {
			passages.add(new Passage(other, text.stripTrailing().length(), Messages.of("conflict.stray")));
		}
		return passages;
	}
}
