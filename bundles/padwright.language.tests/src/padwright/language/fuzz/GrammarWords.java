package padwright.language.fuzz;

import java.util.List;
import java.util.SplittableRandom;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.xtext.AbstractElement;
import org.eclipse.xtext.Action;
import org.eclipse.xtext.Alternatives;
import org.eclipse.xtext.Assignment;
import org.eclipse.xtext.CrossReference;
import org.eclipse.xtext.EnumLiteralDeclaration;
import org.eclipse.xtext.Grammar;
import org.eclipse.xtext.GrammarUtil;
import org.eclipse.xtext.Group;
import org.eclipse.xtext.Keyword;
import org.eclipse.xtext.RuleCall;
import org.eclipse.xtext.TerminalRule;

/** Writes documents at random as the grammar allows, now and again with a word that it does not. */
final class GrammarWords {

	private static final int DEEPEST = 60;
	private static final int MOST_WORDS = 1500;
	private static final String[] NAMES = { "BoehmC", "Bench", "Fs", "F", "As", "Rigid", "Disc20", "Clear",
			"Shellac", "acetal", "felt", "^key", "Bench.Felt", "D♯4", "x", "größer", "_", "a".repeat(300) };
	private static final String[] NUMBERS = { "0", "1", "0.5", "7.5", "12", "12.5", "13", "15", "3.14159", "0.0000001",
			"1000000", "99999999999999999999", "0.5".repeat(1) + "0".repeat(60), "393700787", "1e9", "00", "2147483648" };
	private static final String[] STRINGS = { "\"\"", "\"UNM 1.00\"", "\"A-1042\"", "\"a\\\"b\"", "\"\\\\\"",
			"\"<svg>&amp;\"",
			"\"=1+1\"", "\"../../etc/passwd\"", "\"\u202E\uD83D\uDE00\"", "\"" + "long ".repeat(200) + "\"" };
	private static final String[] DAYS = { "2026-03-01", "2026-02-30", "0000-00-00", "9999-12-31" };
	private static final String[] RANGES = { "13..16", "16..13", "0..0", "0.1..99999999999999999999", "1.5..1.5" };
	private static final String[] STRAYS = { "{", "}", ".", ",", ":", "(", ")", "\"", "//", "<<<<<<< a\n", "=======\n",
			">>>>>>> b\n", "\u0001", "\uFEFF", "'", "-", "..", "+-", "key", "shim", "rule", "not not not" };

	private final Grammar grammar;
	private final SplittableRandom random;
	private final StringBuilder text = new StringBuilder();
	private int words;

	GrammarWords(Grammar grammar, SplittableRandom random) {
		this.grammar = grammar;
		this.random = random;
	}

	/** A document. */
	String document() {
		call(GrammarUtil.findRuleForName(grammar, "Document").getAlternatives(), 0);
		return text.toString();
	}

	private void call(AbstractElement element, int depth) {
		int times = times(element, depth);
		for (int time = 0; time < times && words < MOST_WORDS; time++) {
			once(element, depth);
		}
	}

	private int times(AbstractElement element, int depth) {
		boolean deep = depth > DEEPEST;
		return switch (element.getCardinality() == null ? "" : element.getCardinality()) {
		case "?" -> deep ? 0 : random.nextInt(2);
		case "*" -> deep ? 0 : random.nextInt(5);
		case "+" -> deep ? 1 : 1 + random.nextInt(5);
		default -> 1;
		};
	}

	private void once(EObject element, int depth) {
		if (element instanceof Alternatives choice) {
			List<AbstractElement> all = choice.getElements();
			call(all.get(depth > DEEPEST ? all.size() - 1 : random.nextInt(all.size())), depth + 1);
		} else if (element instanceof Group group) {
			group.getElements().forEach(each -> call(each, depth + 1));
		} else if (element instanceof Assignment assignment) {
			call(assignment.getTerminal(), depth + 1);
		} else if (element instanceof CrossReference reference) {
			call(reference.getTerminal(), depth + 1);
		} else if (element instanceof Keyword keyword) {
			say(keyword.getValue());
		} else if (element instanceof EnumLiteralDeclaration literal) {
			say(literal.getLiteral().getValue());
		} else if (element instanceof RuleCall call && call.getRule() instanceof TerminalRule terminal) {
			say(terminal(terminal.getName()));
		} else if (element instanceof RuleCall call) {
			call(call.getRule().getAlternatives(), depth + 1);
		} else if (!(element instanceof Action)) {
			throw new IllegalStateException(element.toString());
		}
	}

	private String terminal(String name) {
		return switch (name) {
		case "ID" -> any(NAMES);
		case "NUMBER" -> any(NUMBERS);
		case "STRING" -> any(STRINGS);
		case "DAY" -> any(DAYS);
		case "FROM_TO" -> any(RANGES);
		default -> any(STRAYS);
		};
	}

	private String any(String[] choices) {
		return choices[random.nextInt(choices.length)];
	}

	private void say(String word) {
		words++;
		text.append(random.nextInt(150) == 0 ? any(STRAYS) : word).append(random.nextInt(8) == 0 ? "\n\t" : " ");
	}

	/** Some of the words that a document can be spoilt with. */
	static String spoiling(SplittableRandom random) {
		String[][] kinds = { NAMES, NUMBERS, STRINGS, DAYS, RANGES, STRAYS };
		String[] kind = kinds[random.nextInt(kinds.length)];
		return kind[random.nextInt(kind.length)];
	}
}
