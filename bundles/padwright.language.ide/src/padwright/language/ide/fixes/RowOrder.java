package padwright.language.ide.fixes;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import padwright.language.edit.TextEdit;
import padwright.language.ide.words.Messages;
import padwright.language.parser.LineStarts;

/**
 * Puts the clauses of a statement into the order in which they are written: of a key's row in a plan, of a key in a system,
 * and of a pad in a stock. Every word and comment stays; a comment behind the whole statement stays there.
 */
final class RowOrder {

	/** What a statement begins with, what begins its clauses, and those of them that there can be more than one of. */
	private record Shape(String head, List<String> clauses, Set<String> repeated) {
	}

	private static final String COMMENT = "//";
	private static final Shape ROW = new Shape("key", List.of("found", "nick", "warped", "play", "wear", "spring", "fit",
			"measured", "empty", "stack", "felt", "delivered", "remark"), Set.of("felt"));
	private static final Shape KEY = new Shape("key|change(?!\\s+(?:joint|touch|hole|rod)\\b)", List.of("open|closed",
			"turns", "(?<!held\\s{1,9})by", "closes", "opens", "holds", "hole(?=\\s+\\d)|over", "cup", "hinge", "arm", "rise",
			"spring", "on", "at", "around"), Set.of());
	private static final String LAYER = "base|face|skin";
	private static final Shape PAD = new Shape("pad", List.of("kind", LAYER, "thick", "sinks", "diameters", "stiffness", "needs",
			"price"), Set.of(LAYER));

	private static final Pattern DOCUMENT = Pattern.compile("(?m)^[ \\t]*(system|stock|plan)\\b");
	/** A string, a comment, a word, or any other character. */
	private static final Pattern TOKEN = Pattern.compile("\"(?:\\\\.|[^\"\\\\\\n\\r])*\"|//[^\\n\\r]*"
			+ "|\\^?[\\p{L}_\u266d\u266f][\\p{L}\\p{N}_\u266d\u266f]*|\\S");

	/**
	 * @param place among the clauses, -1 for what the statement begins with
	 * @param gap   the blanks before it
	 */
	private record Clause(int place, String gap, String text, boolean endsInComment) {
	}

	private final String text;
	private final Shape shape;
	private final List<MatchResult> tokens;

	private RowOrder(String text, Shape shape, int start) {
		this.text = text;
		this.shape = shape;
		this.tokens = tokens(start);
	}

	/** The fix for the statement at an offset; nothing where its clauses are in order, or one is there twice. */
	static Optional<Fix> of(String text, int offset) {
		Shape shape = shape(text, offset);
		return Pattern.compile("(?m)^[ \\t]*((?:" + shape.head() + ")\\b)").matcher(text).results()
				.map(head -> head.start(1)).takeWhile(start -> start <= offset).reduce((one, next) -> next)
				.map(start -> new RowOrder(text, shape, start)).filter(row -> offset <= row.end()).flatMap(RowOrder::fix);
	}

	private static Shape shape(String text, int offset) {
		String kind = DOCUMENT.matcher(text).results().takeWhile(head -> head.start() <= offset).reduce((one, next) -> next)
				.map(head -> head.group(1)).orElse("");
		return kind.equals("system") ? KEY : kind.equals("stock") ? PAD : ROW;
	}

	/** Up to where the next statement begins, without the comments before that. */
	private List<MatchResult> tokens(int start) {
		List<MatchResult> found = new ArrayList<>();
		Matcher token = TOKEN.matcher(text).region(start, text.length());
		while (token.find() && (found.isEmpty() || !isOfTheNext(token))) {
			found.add(token.toMatchResult());
		}
		while (found.get(found.size() - 1).group().startsWith(COMMENT)) {
			found.remove(found.size() - 1);
		}
		return found;
	}

	private boolean isOfTheNext(MatchResult token) {
		boolean beginsLine = text.substring(text.lastIndexOf('\n', token.start()) + 1, token.start()).isBlank();
		return token.group().equals("}") || place(token) < 0
				&& (token.group().matches(shape.head()) || beginsLine && LineStarts.isOne(token.group()));
	}

	/** That of the clause that it begins; -1 for a word within one. */
	private int place(MatchResult token) {
		for (int place = 0; place < shape.clauses().size(); place++) {
			Matcher clause = Pattern.compile("(?:" + shape.clauses().get(place) + ")").matcher(text)
					.region(token.start(), text.length()).useTransparentBounds(true);
			if (clause.lookingAt() && clause.end() == token.end()) {
				return place;
			}
		}
		return -1;
	}

	private int end() {
		return tokens.get(tokens.size() - 1).end();
	}

	private Optional<Fix> fix() {
		List<Clause> clauses = clauses();
		Set<Integer> once = new HashSet<>();
		boolean twice = clauses.stream().map(Clause::place).filter(place -> !isRepeated(place)).anyMatch(place -> !once.add(place));
		List<Clause> ordered = clauses.stream().sorted(Comparator.comparing(Clause::place)).toList();
		int start = tokens.get(0).start();
		return twice || ordered.equals(clauses) ? Optional.empty()
				: Optional.of(Fix.of(Messages.of("fix.order"), new TextEdit(start, end() - start, joined(ordered))));
	}

	private boolean isRepeated(int place) {
		return place >= 0 && shape.repeated().contains(shape.clauses().get(place));
	}

	private List<Clause> clauses() {
		List<Clause> clauses = new ArrayList<>();
		int first = 0;
		for (int token = 1; token <= tokens.size(); token++) {
			if (token == tokens.size() || place(tokens.get(token)) >= 0) {
				clauses.add(clause(first, token));
				first = token;
			}
		}
		return clauses;
	}

	/** Of the tokens from {@code first} to before {@code next}. */
	private Clause clause(int first, int next) {
		MatchResult last = tokens.get(next - 1);
		int start = tokens.get(first).start();
		return new Clause(first == 0 ? -1 : place(tokens.get(first)),
				first == 0 ? "" : text.substring(tokens.get(first - 1).end(), start),
				text.substring(start, last.end()), last.group().startsWith(COMMENT));
	}

	/** Each behind its own blanks; on a new line where it would become part of a comment. */
	private String joined(List<Clause> ordered) {
		int line = text.lastIndexOf('\n', tokens.get(0).start()) + 1;
		String ownLine = "\n" + text.substring(line, tokens.get(0).start()) + "\t";
		StringBuilder joined = new StringBuilder();
		boolean behindComment = false;
		for (Clause clause : ordered) {
			joined.append(behindComment && !clause.gap().contains("\n") ? ownLine : clause.gap()).append(clause.text());
			behindComment = clause.endsInComment();
		}
		return joined.toString();
	}
}
