package padwright.language;

import org.eclipse.xtext.conversion.IValueConverterService;

import padwright.language.conversion.PadwrightValueConverters;

/** The services of the language, apart from any editor. */
public class PadwrightRuntimeModule extends AbstractPadwrightRuntimeModule {

	@Override
	public Class<? extends IValueConverterService> bindIValueConverterService() {
		return PadwrightValueConverters.class;
	}
}
