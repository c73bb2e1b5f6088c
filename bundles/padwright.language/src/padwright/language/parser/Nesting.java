package padwright.language.parser;

import java.util.ArrayList;
import java.util.List;

import org.antlr.runtime.CommonToken;
import org.antlr.runtime.Token;
import org.antlr.runtime.TokenSource;

/** Finds rules whose condition is nested so deeply that reading it could exhaust the stack. */
final class Nesting {

	/** More than anybody can follow. */
	static final int DEEPEST = 100;

	private static final String TOO_DEEP = "This rule is nested too deeply: more than " + DEEPEST
			+ " of ( and not in each other. Split it into several rules.";

	private final String text;
	private final List<Passage> passages = new ArrayList<>();
	private int rule;
	private int depth;
	private int readOn;

	private Nesting(String text) {
		this.text = text;
	}

	/** The rules that are nested too deeply. */
	static List<Passage> tooDeep(String text, TokenSource tokens) {
		Nesting nesting = new Nesting(text);
		for (Token token = tokens.nextToken(); token.getType() != Token.EOF; token = tokens.nextToken()) {
			nesting.meet((CommonToken) token);
		}
		return nesting.passages;
	}

	private void meet(CommonToken token) {
		int start = token.getStartIndex();
		if (start < readOn) {
			return;
		}
		switch (token.getText()) {
		case "rule" -> begin(start);
		case "(", "not" -> deeper(start);
		case ")" -> depth--;
		default -> {
		}
		}
	}

	private void begin(int start) {
		rule = start;
		depth = 0;
	}

	private void deeper(int start) {
		depth++;
		if (depth > DEEPEST) {
			readOn = LineStarts.after(start, text);
			passages.add(new Passage(rule, rule + text.substring(rule, readOn).stripTrailing().length(), TOO_DEEP));
			begin(readOn);
		}
	}
}
