package padwright.language;

import org.eclipse.emf.ecore.util.Diagnostician;
import org.eclipse.xtext.conversion.IValueConverterService;
import org.eclipse.xtext.linking.ILinkingDiagnosticMessageProvider;
import org.eclipse.xtext.parser.IParser;
import org.eclipse.xtext.resource.XtextResource;
import org.eclipse.xtext.parser.antlr.ISyntaxErrorMessageProvider;
import org.eclipse.xtext.resource.IDefaultResourceDescriptionStrategy;
import org.eclipse.xtext.scoping.IGlobalScopeProvider;
import org.eclipse.xtext.scoping.IScopeProvider;
import org.eclipse.xtext.scoping.impl.AbstractDeclarativeScopeProvider;
import org.eclipse.xtext.validation.CompositeEValidator;

import com.google.inject.Binder;
import com.google.inject.name.Names;

import padwright.language.conversion.PadwrightValueConverters;
import padwright.language.messages.LinkMessages;
import padwright.language.parser.ResumingParser;
import padwright.language.parser.SyntaxMessages;
import padwright.language.resource.DocumentResource;
import padwright.language.resource.SharedNames;
import padwright.language.scoping.SharedElements;
import padwright.language.scoping.SharedScopes;
import padwright.language.validation.WholeDocuments;

/** The services of the language, apart from any editor. */
public class PadwrightRuntimeModule extends AbstractPadwrightRuntimeModule {

	@Override
	public Class<? extends IParser> bindIParser() {
		return ResumingParser.class;
	}

	@Override
	public Class<? extends XtextResource> bindXtextResource() {
		return DocumentResource.class;
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

	/** It asks for what no package of ours demands, and takes long over it. */
	public void configureUseEObjectValidator(Binder binder) {
		binder.bind(Boolean.TYPE).annotatedWith(Names.named(CompositeEValidator.USE_EOBJECT_VALIDATOR)).toInstance(false);
	}

	@Override
	public Class<? extends Diagnostician> bindDiagnostician() {
		return WholeDocuments.class;
	}

	@Override
	public void configureIScopeProviderDelegate(Binder binder) {
		binder.bind(IScopeProvider.class).annotatedWith(Names.named(AbstractDeclarativeScopeProvider.NAMED_DELEGATE))
				.to(SharedElements.class);
	}

	@Override
	public Class<? extends IGlobalScopeProvider> bindIGlobalScopeProvider() {
		return SharedScopes.class;
	}

	public Class<? extends IDefaultResourceDescriptionStrategy> bindIDefaultResourceDescriptionStrategy() {
		return SharedNames.class;
	}
}
