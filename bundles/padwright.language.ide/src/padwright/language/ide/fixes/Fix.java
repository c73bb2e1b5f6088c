package padwright.language.ide.fixes;

import java.util.List;

import padwright.language.edit.TextEdit;

/**
 * A way to mend a finding.
 *
 * @param title what it does, in the imperative
 * @param edits of the document that the finding is in
 */
public record Fix(String title, List<TextEdit> edits) {

	public Fix {
		edits = List.copyOf(edits);
	}

	static Fix of(String title, TextEdit edit) {
		return new Fix(title, List.of(edit));
	}
}
