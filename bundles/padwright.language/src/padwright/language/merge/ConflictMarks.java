package padwright.language.merge;

import java.util.List;
import java.util.regex.Pattern;

/** The lines that mark a place of a merged file at which both sides changed the same. */
public final class ConflictMarks {

	/** Before the text of the first side. */
	public static final String OURS = "<<<<<<< ours";
	/** Between the texts of the two sides. */
	public static final String OR = "=======";
	/** Behind the text of the second side. */
	public static final String THEIRS = ">>>>>>> theirs";

	/** Any mark at the beginning of a line, also as other programs write them. */
	public static final Pattern MARK =
			Pattern.compile("(?m)^(?:<{7}|>{7}|\\|{7}|={7})(?![<>|=])[^\\r\\n]*");

	private static final List<String> SIGNS = List.of("<<<<<<<", ">>>>>>>", "|||||||", "=======");

	private ConflictMarks() {
	}

	/** Whether a text can have marks at all, told much faster than by looking for them line by line. */
	public static boolean mayBeIn(String text) {
		return SIGNS.stream().anyMatch(text::contains);
	}

	/** Both texts between marks, to be put behind {@code before}. */
	static String write(Sides sides, String before, String lineEnd) {
		int shared = sharedLines(sides);
		String blanks = sides.ours().substring(0, shared);
		String start = before.isEmpty() && blanks.isEmpty() || (before + blanks).endsWith("\n") ? "" : lineEnd;
		return blanks + start + OURS + lineEnd + lines(sides.ours().substring(shared), lineEnd) + OR + lineEnd
				+ lines(sides.theirs().substring(shared), lineEnd) + THEIRS;
	}

	/** How many characters both sides begin with that are nothing but blank lines. */
	private static int sharedLines(Sides sides) {
		int shared = 0;
		int most = Math.min(sides.ours().length(), sides.theirs().length());
		for (int at = 0; at < most && sides.ours().charAt(at) == sides.theirs().charAt(at)
				&& Character.isWhitespace(sides.ours().charAt(at)); at++) {
			shared = sides.ours().charAt(at) == '\n' ? at + 1 : shared;
		}
		return shared;
	}

	private static String lines(String text, String lineEnd) {
		String begun = Joint.startsALine(text) ? text.replaceFirst("\\R", "") : text;
		return begun.isEmpty() || begun.endsWith("\n") ? begun : begun + lineEnd;
	}
}
