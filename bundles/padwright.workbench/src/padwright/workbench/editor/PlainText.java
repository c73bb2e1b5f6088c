package padwright.workbench.editor;

import java.util.regex.Pattern;

/** Markdown of the server, as text for controls that show none. */
final class PlainText {

	/** The control that shows hovers cuts longer lines off. */
	private static final Pattern BREAK = Pattern.compile("(.{60,80}) ");

	private PlainText() {
	}

	/** Without marks of emphasis, with one line for each paragraph, and long ones broken between words. */
	static String of(String markdown) {
		String text = markdown.replace("**", "").replace("`", "").replace("\n\n", "\n");
		return BREAK.matcher(text).replaceAll("$1\n");
	}
}
