package padwright.language.ide.fixes;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

import padwright.language.edit.TextEdit;
import padwright.language.ide.words.Messages;

/** Puts the clauses of a key's row into the order in which they are written. */
final class RowOrder {

	/** By the words that begin them. */
	private static final List<String> CLAUSES = List.of("key", "found", "nick", "warped", "play", "spring", "fit", "empty",
			"stack", "felt", "delivered", "remark");
	/** Of these there can be more than one. */
	private static final String ROUND = "felt";
	private static final Pattern ROW = Pattern.compile("(?m)^[ \\t]*(key\\b[^\\n\\r}]*)");
	private static final Pattern TOKEN = Pattern.compile("\"[^\"]*\"|//.*|\\^?[\\p{L}_][\\p{L}\\p{N}_]*");

	private record Clause(int place, String text) {
	}

	private RowOrder() {
	}

	/** The fix for the row at an offset; nothing where its clauses are in order, or one is there twice. */
	static Optional<Fix> of(String text, int offset) {
		Matcher row = ROW.matcher(text);
		while (row.find()) {
			if (row.start(1) <= offset && offset < row.end(1)) {
				return ordered(row.group(1)).map(anew -> Fix.of(Messages.of("fix.order"),
						new TextEdit(row.start(1), row.group(1).length(), anew)));
			}
		}
		return Optional.empty();
	}

	private static Optional<String> ordered(String row) {
		List<Clause> clauses = clauses(row);
		Set<Integer> once = new HashSet<>();
		boolean twice = clauses.stream().map(Clause::place).filter(place -> place != CLAUSES.indexOf(ROUND))
				.anyMatch(place -> !once.add(place));
		String anew = clauses.stream().sorted(Comparator.comparing(Clause::place)).map(Clause::text)
				.collect(Collectors.joining(" "));
		return twice || row.contains("//") || anew.equals(row.strip()) ? Optional.empty() : Optional.of(anew);
	}

	private static List<Clause> clauses(String row) {
		List<Clause> clauses = new ArrayList<>();
		Matcher token = TOKEN.matcher(row);
		int start = 0;
		int place = 0;
		while (token.find()) {
			int next = CLAUSES.indexOf(token.group());
			if (next > 0) {
				clauses.add(new Clause(place, row.substring(start, token.start()).strip()));
				start = token.start();
				place = next;
			}
		}
		clauses.add(new Clause(place, row.substring(start).strip()));
		return clauses;
	}
}
