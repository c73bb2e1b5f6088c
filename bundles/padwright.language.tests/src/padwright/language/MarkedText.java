package padwright.language;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/**
 * A text with its findings written into it: each as {@code [error arc-empty|4]} around the place it is reported at. Of
 * findings that begin at one place the longest stands outside, then they stand by severity and code.
 */
public final class MarkedText {

	private static final String OPENING = "\\[(error|warning|info) [a-z-]+\\|";
	private static final Comparator<Mark> OUTSIDE_FIRST = Comparator.comparingInt(Mark::length).reversed()
			.thenComparing(Mark::severity).thenComparing(Mark::code);

	private MarkedText() {
	}

	/** The text that the technician wrote. */
	public static String withoutMarks(String marked) {
		return marked.replaceAll(OPENING, "").replace("]", "");
	}

	/** {@code text} with its findings written into it. */
	public static String withMarks(String text, List<Mark> marks) {
		StringBuilder marked = new StringBuilder();
		for (int offset = 0; offset <= text.length(); offset++) {
			marked.append("]".repeat(closing(offset, marks)));
			marked.append(opening(offset, marks));
			marked.append(text, offset, Math.min(offset + 1, text.length()));
		}
		return marked.toString();
	}

	private static int closing(int offset, List<Mark> marks) {
		return (int) marks.stream().filter(mark -> mark.length() > 0 && mark.end() == offset).count();
	}

	private static String opening(int offset, List<Mark> marks) {
		return marks.stream().filter(mark -> mark.offset() == offset).sorted(OUTSIDE_FIRST)
				.map(mark -> "[" + mark.severity().name().toLowerCase(Locale.ROOT) + " " + mark.code() + "|"
						+ (mark.length() == 0 ? "]" : ""))
				.collect(Collectors.joining());
	}
}
