package padwright.language.parser;

import java.util.ArrayList;
import java.util.List;

import org.antlr.runtime.CommonToken;
import org.antlr.runtime.Token;
import org.antlr.runtime.TokenSource;

import padwright.language.messages.Messages;

/** Finds rules and preferences whose condition is so deep or so long that working with it could exhaust the stack. */
final class RuleLimits {

	/** Of parentheses and {@code not} in each other; more than anybody can follow. */
	static final int DEEPEST = 100;
	/** Of {@code and} and {@code or} in one rule. */
	static final int LONGEST = 300;

	/** A text without it has no conditions. */
	static final String KEYWORD = "when";



	private final String text;
	private final List<Passage> passages = new ArrayList<>();
	private int rule;
	private int depth;
	private int length;
	private int readOn;

	private RuleLimits(String text) {
		this.text = text;
	}

	/** The rules that are beyond the limits. */
	static List<Passage> beyond(String text, TokenSource tokens) {
		RuleLimits limits = new RuleLimits(text);
		for (Token token = tokens.nextToken(); token.getType() != Token.EOF; token = tokens.nextToken()) {
			limits.meet((CommonToken) token);
		}
		return limits.passages;
	}

	private void meet(CommonToken token) {
		int start = token.getStartIndex();
		if (start < readOn) {
			return;
		}
		switch (token.getText()) {
		case "rule", "prefer", "avoid" -> begin(start);
		case "(", "not" -> depth++;
		case ")" -> depth--;
		case "and", "or" -> length++;
		default -> {
		}
		}
		if (depth > DEEPEST || length > LONGEST) {
			passOver(start);
		}
	}

	private void begin(int start) {
		rule = start;
		depth = 0;
		length = 0;
	}

	private void passOver(int start) {
		readOn = LineStarts.after(start, text);
		passages.add(new Passage(rule, rule + text.substring(rule, readOn).stripTrailing().length(),
				Messages.of("rule.tooMuch", DEEPEST, LONGEST)));
		begin(readOn);
	}
}
