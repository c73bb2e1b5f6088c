package padwright.language.ide.completion;

import org.eclipse.xtext.CrossReference;
import org.eclipse.xtext.RuleCall;
import org.eclipse.xtext.conversion.IValueConverterService;
import org.eclipse.xtext.naming.IQualifiedNameConverter;
import org.eclipse.xtext.resource.IEObjectDescription;

import com.google.inject.Inject;

/** Names as they are written where they are linked: with a hat where they would be taken for a word of the language. */
final class WrittenNames {

	@Inject
	private IQualifiedNameConverter names;
	@Inject
	private IValueConverterService converters;

	String of(IEObjectDescription candidate, CrossReference reference) {
		return converters.toString(names.toString(candidate.getName()),
				((RuleCall) reference.getTerminal()).getRule().getName());
	}
}
