package padwright.language.edit;

import java.io.StringReader;
import java.util.List;
import java.util.Optional;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.xtext.AbstractRule;
import org.eclipse.xtext.EcoreUtil2;
import org.eclipse.xtext.EnumRule;
import org.eclipse.xtext.Keyword;
import org.eclipse.xtext.ParserRule;
import org.eclipse.xtext.TerminalRule;
import org.eclipse.xtext.conversion.IValueConverterService;
import org.eclipse.xtext.conversion.ValueConverterException;
import org.eclipse.xtext.parser.IParser;
import org.eclipse.xtext.resource.IResourceServiceProvider;
import org.eclipse.xtext.resource.XtextResource;

import padwright.language.messages.Messages;

/** Between the value of a field as it is typed and as it stands in a document. */
final class FieldText {

	private static final String QUOTED = "STRING";


	private final AbstractRule rule;
	private final IValueConverterService values;
	private final IParser parser;

	private FieldText(AbstractRule rule, IResourceServiceProvider services) {
		this.rule = rule;
		values = services.get(IValueConverterService.class);
		parser = services.get(IParser.class);
	}

	static FieldText of(EObject element, AbstractRule rule) {
		return new FieldText(rule, ((XtextResource) element.eResource()).getResourceServiceProvider());
	}

	/** Whether values of a rule can be typed: all but names, which others refer to. */
	static boolean isFor(AbstractRule rule) {
		return !(rule instanceof TerminalRule) || rule.getName().equals(QUOTED);
	}

	private boolean isQuoted() {
		return rule.getName().equals(QUOTED);
	}

	/** What is wrong with a value; nothing where it can be written. */
	Optional<String> fault(String value) {
		if (isQuoted()) {
			return Optional.empty();
		}
		if (value.isBlank()) {
			return Optional.of(Messages.of("field.empty"));
		}
		if (rule instanceof EnumRule words) {
			return words(words).contains(value) ? Optional.empty()
					: Optional.of(Messages.of("field.notHere", value));
		}
		if (rule instanceof ParserRule words && parser.parse(words, new StringReader(value)).hasSyntaxErrors()
				|| value.contains("//")) {
			return Optional.of(Messages.of("field.notHere", value.strip()));
		}
		try {
			values.toValue(value.strip(), rule.getName(), null);
			return Optional.empty();
		} catch (ValueConverterException wrong) {
			return Optional.of(wrong.getMessage());
		}
	}

	private static List<String> words(EnumRule rule) {
		return EcoreUtil2.eAllOfType(rule, Keyword.class).stream().map(Keyword::getValue).toList();
	}

	/** A value without fault as it is written. */
	String written(String value) {
		return isQuoted() ? values.toString(value.strip(), rule.getName()) : value.strip();
	}

	/** A value as it stands in a document, as it is typed. */
	String typed(String written) {
		return isQuoted() ? String.valueOf(values.toValue(written, rule.getName(), null)) : written;
	}
}
