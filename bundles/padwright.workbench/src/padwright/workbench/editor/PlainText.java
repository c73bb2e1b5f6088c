package padwright.workbench.editor;

/** Markdown of the server, as text for controls that show none. */
final class PlainText {

	private PlainText() {
	}

	/** Without marks of emphasis, and with one line for each paragraph. */
	static String of(String markdown) {
		return markdown.replace("**", "").replace("`", "").replace("\n\n", "\n");
	}
}
