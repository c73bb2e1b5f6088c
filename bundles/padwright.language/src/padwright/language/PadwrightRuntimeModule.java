package padwright.language;

import org.eclipse.xtext.conversion.IValueConverterService;
import org.eclipse.xtext.linking.ILinkingDiagnosticMessageProvider;
import org.eclipse.xtext.parser.IParser;
import org.eclipse.xtext.parser.antlr.ISyntaxErrorMessageProvider;
import org.eclipse.xtext.resource.IDefaultResourceDescriptionStrategy;

import padwright.language.conversion.PadwrightValueConverters;
import padwright.language.messages.LinkMessages;
import padwright.language.messages.SyntaxMessages;
import padwright.language.parser.ResumingParser;
import padwright.language.resource.SharedNames;

/** The services of the language, apart from any editor. */
public class PadwrightRuntimeModule extends AbstractPadwrightRuntimeModule {

	@Override
	public Class<? extends IParser> bindIParser() {
		return ResumingParser.class;
	}

	@Override
	public Class<? extends IValueConverterService> bindIValueConverterService() {
		return PadwrightValueConverters.class;
	}

	public Class<? extends ILinkingDiagnosticMessageProvider.Extended> bindILinkingDiagnosticMessageProvider() {
		return LinkMessages.class;
	}

	public Class<? extends ISyntaxErrorMessageProvider> bindISyntaxErrorMessageProvider() {
		return SyntaxMessages.class;
	}

	public Class<? extends IDefaultResourceDescriptionStrategy> bindIDefaultResourceDescriptionStrategy() {
		return SharedNames.class;
	}
}
