package padwright.language.formatting2;

import org.eclipse.xtext.formatting2.ITextReplacer;
import org.eclipse.xtext.formatting2.ITextReplacerContext;
import org.eclipse.xtext.formatting2.regionaccess.ISemanticRegion;
import org.eclipse.xtext.formatting2.regionaccess.ITextSegment;

/**
 * Lays out the blanks inside a value of several words, such as {@code 14.3 mm}; a sign stands close to its number. One with a
 * remark inside stays.
 */
final class WordLayout implements ITextReplacer {

	private static final String BLANKS = "[\\s\\u00A0\\uFEFF]+";

	private final ISemanticRegion value;
	private final String separator;

	WordLayout(ISemanticRegion value, String separator) {
		this.value = value;
		this.separator = separator;
	}

	@Override
	public ITextSegment getRegion() {
		return value;
	}

	@Override
	public ITextReplacerContext createReplacements(ITextReplacerContext context) {
		if (!value.getText().contains("//")) {
			context.addReplacement(value.replaceWith(laidOut(value.getText())));
		}
		return context;
	}

	private String laidOut(String words) {
		return words.replaceAll(BLANKS, separator).replaceAll("^([+-]) ", "$1");
	}
}
