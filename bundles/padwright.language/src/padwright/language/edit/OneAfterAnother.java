package padwright.language.edit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Joins what is inserted at one place into one edit, so that the order does not depend on who applies it. */
final class OneAfterAnother {

	private OneAfterAnother() {
	}

	/** Clauses of the statement that ends at a place come before statements that are added behind it. */
	static List<TextEdit> of(List<TextEdit> edits) {
		Map<Integer, String> inserted = new LinkedHashMap<>();
		List<TextEdit> all = new ArrayList<>();
		for (TextEdit edit : edits) {
			if (edit.length() > 0) {
				all.add(edit);
			} else {
				inserted.merge(edit.offset(), edit.text(), OneAfterAnother::together);
			}
		}
		inserted.forEach((offset, text) -> all.add(new TextEdit(offset, 0, text)));
		return all;
	}

	private static String together(String one, String other) {
		return isStatement(one) && !isStatement(other) ? other + one : one + other;
	}

	private static boolean isStatement(String text) {
		return text.startsWith("\n") || text.startsWith("\r");
	}
}
