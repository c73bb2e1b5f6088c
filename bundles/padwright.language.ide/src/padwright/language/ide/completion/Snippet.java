package padwright.language.ide.completion;

import java.util.List;

/**
 * Something whole to write, such as a row or a plan, with stops that a typist visits in turn.
 *
 * @param rules the rules of the grammar that may begin with it
 * @param label what it is called in a list; begins as the text does, so that editors find it by what is typed
 * @param template its text, in the protocol's form for snippets; names of the shop stand as in {@link SnippetNames}
 */
record Snippet(List<String> rules, String label, String template) {

	/** The word of the language that it begins with. */
	String word() {
		return template.split("\\P{L}", 2)[0];
	}
}
