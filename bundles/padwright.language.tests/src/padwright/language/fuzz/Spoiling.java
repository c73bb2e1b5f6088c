package padwright.language.fuzz;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Spoils documents word by word. */
final class Spoiling {

	private static final Pattern WORD =
			Pattern.compile("\"[^\"\\n]*\"|//[^\\n]*|[\\p{L}\\p{N}_♯♭.]+|\\s+|.", Pattern.DOTALL);
	private static final int MOST_CHANGES = 8;

	private final SplittableRandom random;

	Spoiling(SplittableRandom random) {
		this.random = random;
	}

	/** {@code text} with some words of its own or others put in, doubled, exchanged or taken away. */
	String of(String text) {
		List<String> words = new ArrayList<>();
		Matcher word = WORD.matcher(text);
		while (word.find()) {
			words.add(word.group());
		}
		for (int changes = 1 + random.nextInt(MOST_CHANGES); changes > 0 && !words.isEmpty(); changes--) {
			change(words);
		}
		return String.join("", words);
	}

	private void change(List<String> words) {
		int at = random.nextInt(words.size());
		int other = random.nextInt(words.size());
		switch (random.nextInt(7)) {
		case 0 -> words.remove(at);
		case 1 -> words.add(at, words.get(other));
		case 2 -> words.set(at, words.get(other));
		case 3 -> words.add(at, " " + GrammarWords.spoiling(random) + " ");
		case 4 -> words.set(at, GrammarWords.spoiling(random));
		case 5 -> words.subList(Math.min(at, other), Math.min(Math.max(at, other), Math.min(at, other) + 40)).clear();
		default -> words.addAll(at, List.copyOf(words.subList(other, Math.min(words.size(), other + 30))));
		}
	}
}
