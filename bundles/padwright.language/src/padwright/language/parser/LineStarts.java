package padwright.language.parser;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Where reading can go on after something that cannot be read: at the next line that begins like a statement or ends a
 * block. Layout is free, but nearly everybody begins statements on lines of their own.
 */
public final class LineStarts {

	private static final Pattern STATEMENT = Pattern.compile("(?m)^[ \\t\\u00A0]*(?:\\}|"
			+ "(?:system|pitch|sounds|clock|revision|joint|touch|hole|key|rod|change|remove|note"
			+ "|stock|bench|levelling|material|pad|kind|base|face|skin|thick|sinks|diameters|stiffness|needs|price"
			+ "|backing|film|feeler|adhesive|rule|prefer|avoid|process|stage|letterhead"
			+ "|plan|date|seat|bed|player|inspect|build|tenon|fit|read|empty|felt|regulate"
			+ "|job|came|played|tester|photo|mechanism|spring|bumper|head|rim|cup|washer|wetted|ironed|clamped"
			+ "|waits|estimate|option|item|agreed|deposit|invoice|delivered|second|warranty|internal)\\b)");
	private static final Pattern HEAD = Pattern.compile("[ \\t\\u00A0]*(?:system|stock|plan)\\b.*", Pattern.DOTALL);

	private LineStarts() {
	}

	/** Whether a word begins a statement, or a brace ends a block of them. */
	public static boolean isOne(String word) {
		return STATEMENT.matcher(word).matches();
	}

	/** Whether a line begins with a statement at {@code offset}. */
	static boolean isAt(int offset, String text) {
		int line = text.lastIndexOf('\n', offset - 1) + 1;
		Matcher statement = STATEMENT.matcher(text).region(line, text.length()).useAnchoringBounds(true);
		return statement.lookingAt() && statement.end() > offset;
	}

	/** Whether the words at {@code offset} stand in the head of a system, a stock or a plan, ahead of its brace. */
	static boolean isInHead(int offset, String text) {
		String before = text.substring(text.lastIndexOf('\n', offset - 1) + 1, offset);
		return HEAD.matcher(before).matches() && !before.contains("{");
	}

	/** The offset of the next one behind {@code offset}, or the end of the text. */
	static int after(int offset, String text) {
		Matcher statement = STATEMENT.matcher(text);
		int lineEnd = text.indexOf('\n', offset);
		return lineEnd >= 0 && statement.find(lineEnd + 1) ? statement.start() : text.length();
	}
}
