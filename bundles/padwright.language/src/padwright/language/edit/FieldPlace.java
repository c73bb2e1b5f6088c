package padwright.language.edit;

import org.eclipse.xtext.AbstractRule;

/**
 * Where the value of a field is written.
 *
 * @param offset in the text
 * @param length of the value that is replaced; 0 where there is none yet
 * @param before what is written before the value: the words that lead to it, and the blanks before them
 * @param after what is written behind the value
 * @param rule of the grammar that the value follows
 */
record FieldPlace(int offset, int length, String before, String after, AbstractRule rule) {

	TextEdit edit(String written) {
		return new TextEdit(offset, length, before + written + after);
	}
}
