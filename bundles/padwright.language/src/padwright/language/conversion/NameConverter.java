package padwright.language.conversion;

import java.util.HashSet;
import java.util.Set;
import java.util.regex.Pattern;

import org.eclipse.xtext.Grammar;
import org.eclipse.xtext.GrammarUtil;
import org.eclipse.xtext.conversion.IValueConverter;
import org.eclipse.xtext.conversion.ValueConverterException;
import org.eclipse.xtext.nodemodel.INode;

import padwright.language.messages.Messages;

/**
 * Converts a rule that is a name: one word, or any text in quotation marks; what it may hold a check says. Names that
 * are words of the language, or more than one word, are written in quotation marks.
 */
final class NameConverter implements IValueConverter<String> {

	private static final String QUOTE = "\"";
	private static final String ESCAPE = "^";
	private static final Pattern WORD = Pattern.compile("[\\p{L}_♭♯&&[^×÷]][\\p{L}_♭♯0-9&&[^×÷]]*");

	private static final Pattern UNWRITABLE = Pattern.compile("[\"\\\\\\v]");

	private final Set<String> quoted;

	NameConverter(Grammar grammar, String rule) {
		quoted = new HashSet<>(GrammarUtil.getAllKeywords(grammar));
		quoted.removeAll(WordConverter.listed(GrammarUtil.findRuleForName(grammar, rule)));
	}

	@Override
	public String toValue(String text, INode node) {
		if (text == null || !text.startsWith(QUOTE)) {
			return text != null && text.startsWith(ESCAPE) ? text.substring(1) : text;
		}
		return text.substring(1, Math.max(1, text.length() - 1));
	}

	@Override
	public String toString(String name) {
		if (UNWRITABLE.matcher(name).find()) {
			throw new ValueConverterException(Messages.of("no.name", name), null, null);
		}
		return WORD.matcher(name).matches() && !quoted.contains(name) ? name : QUOTE + name + QUOTE;
	}
}
