package padwright.language.edit;

import java.util.Comparator;
import java.util.List;

/**
 * A replacement in a text.
 *
 * @param offset from 0
 * @param length of what is replaced, 0 to insert
 */
public record TextEdit(int offset, int length, String text) {

	/** {@code text} with all edits applied; they must not overlap. */
	public static String apply(List<TextEdit> edits, String text) {
		StringBuilder edited = new StringBuilder(text);
		edits.stream().sorted(Comparator.comparingInt(TextEdit::offset).reversed()).forEach(
				edit -> edited.replace(edit.offset, edit.offset + edit.length, edit.text));
		return edited.toString();
	}
}
