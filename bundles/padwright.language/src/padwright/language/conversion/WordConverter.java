package padwright.language.conversion;

import java.util.HashSet;
import java.util.Set;

import org.eclipse.xtext.AbstractRule;
import org.eclipse.xtext.EcoreUtil2;
import org.eclipse.xtext.Grammar;
import org.eclipse.xtext.GrammarUtil;
import org.eclipse.xtext.Keyword;
import org.eclipse.xtext.RuleCall;
import org.eclipse.xtext.conversion.IValueConverter;
import org.eclipse.xtext.nodemodel.INode;

/** Converts a rule that is one word: a name, or a keyword it lists. Other keywords are written {@code ^word}. */
final class WordConverter implements IValueConverter<String> {

	private static final String ESCAPE = "^";

	private final Set<String> escaped;

	WordConverter(Grammar grammar, String rule) {
		escaped = new HashSet<>(GrammarUtil.getAllKeywords(grammar));
		escaped.removeAll(listed(GrammarUtil.findRuleForName(grammar, rule)));
	}

	static Set<String> listed(AbstractRule rule) {
		Set<String> keywords = new HashSet<>();
		EcoreUtil2.eAllOfType(rule, Keyword.class).forEach(keyword -> keywords.add(keyword.getValue()));
		EcoreUtil2.eAllOfType(rule, RuleCall.class).forEach(call -> keywords.addAll(listed(call.getRule())));
		return keywords;
	}

	@Override
	public String toValue(String text, INode node) {
		return text != null && text.startsWith(ESCAPE) ? text.substring(1) : text;
	}

	@Override
	public String toString(String word) {
		return escaped.contains(word) ? ESCAPE + word : word;
	}
}
