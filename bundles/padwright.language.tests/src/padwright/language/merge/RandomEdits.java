package padwright.language.merge;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

/** Seeded edits of single lines of a document, each line one statement of its own. */
final class RandomEdits {

	private static final List<String> STATEMENTS =
			List.of("key", "regulate", "note", "feeler", "film", "rule", "change", "backing");

	private final List<String> lines;
	private final Random random;

	RandomEdits(String text, long seed) {
		lines = List.of(text.split("(?<=\\n)"));
		random = new Random(seed);
	}

	/** The numbers of lines that hold just one whole statement, in random order. */
	List<Integer> statements() {
		List<Integer> statements = new ArrayList<>();
		for (int line = 0; line < lines.size(); line++) {
			String text = lines.get(line).strip();
			if (STATEMENTS.contains(text.split(" ")[0]) && balanced(text) && !goesOn(line)) {
				statements.add(line);
			}
		}
		Collections.shuffle(statements, random);
		return statements;
	}

	/** Whether a statement needs the next line, too, which is indented more then. */
	private boolean goesOn(int line) {
		return line + 1 < lines.size() && indent(lines.get(line + 1)) > indent(lines.get(line));
	}

	private static int indent(String line) {
		return line.length() - line.stripLeading().length();
	}

	private static boolean balanced(String text) {
		return text.chars().filter(letter -> letter == '{').count() == text.chars().filter(letter -> letter == '}').count();
	}

	/** The document with these lines edited: a figure changed, a remark added behind, or the line taken away. */
	String edited(List<Integer> chosen) {
		Set<Integer> all = new TreeSet<>(chosen);
		StringBuilder text = new StringBuilder();
		for (int line = 0; line < lines.size(); line++) {
			text.append(all.contains(line) ? edited(line) : lines.get(line));
		}
		return text.toString();
	}

	/** The same for the same line, whichever others are edited with it. */
	private String edited(int line) {
		String text = lines.get(line);
		return switch (line % 3) {
		case 0 -> "";
		case 1 -> text.replaceFirst("\\s*\\n$", " // seen " + line + "\n");
		default -> text.replaceFirst(" (?:15|0\\.5|7\\.5)\\b", " 14");
		};
	}

	/** The document with some of its words doubled, dropped or exchanged; it may not be one any more. */
	String spoilt() {
		List<String> words = new ArrayList<>(List.of(String.join("", lines).split("(?<=\\s)")));
		for (int count = 0; count < 4; count++) {
			int at = random.nextInt(words.size());
			switch (random.nextInt(3)) {
			case 0 -> words.set(at, "");
			case 1 -> words.add(at, words.get(random.nextInt(words.size())));
			default -> Collections.swap(words, at, random.nextInt(words.size()));
			}
		}
		return words.stream().collect(Collectors.joining());
	}
}
