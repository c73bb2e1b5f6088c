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
 * Converts a rule that is a name: one word, or any text in quotation marks that has none and no point inside. Names that
 * are words of the language, or more than one word, are written in quotation marks.
 */
final class NameConverter implements IValueConverter<String> {

	private static final String QUOTE = "\"";
	private static final String ESCAPE = "^";
	private static final Pattern WORD = Pattern.compile("[\\p{L}_♭♯&&[^×÷]][\\p{L}_♭♯0-9&&[^×÷]]*");
	private static final Pattern NEVER_INSIDE = Pattern.compile("[\"\\\\./\\v]|^\\s|\\s$|^$");

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
		String name = text.substring(1, Math.max(1, text.length() - 1));
		if (NEVER_INSIDE.matcher(name).find()) {
			throw new ValueConverterException(Messages.of("no.name", text), node, null);
		}
		return name;
	}

	@Override
	public String toString(String name) {
		return WORD.matcher(name).matches() && !quoted.contains(name) ? name : QUOTE + name + QUOTE;
	}
}
