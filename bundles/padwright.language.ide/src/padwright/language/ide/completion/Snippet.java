package padwright.language.ide.completion;

import java.util.List;

/**
 * Something whole to write, such as a row or a plan, with stops that a typist visits in turn.
 *
 * @param name of its file
 * @param rules the rules of the grammar that may begin with it
 * @param template its text, in the protocol's form for snippets; names of the shop stand as in {@link SnippetNames}
 */
record Snippet(String name, List<String> rules, String template) {

	/** What it is called in a list; begins as the text does, so that editors find it by what is typed. */
	String label() {
		return Snippets.label(name);
	}

	/** The word of the language that it begins with. */
	String word() {
		return template.split("\\P{L}", 2)[0];
	}
}
