package padwright.exchange.text;

import org.eclipse.xtext.serializer.tokens.ICrossReferenceSerializer;

import padwright.language.PadwrightRuntimeModule;

/** The language, but for the way it writes links. */
public class NameLinksModule extends PadwrightRuntimeModule {

	public Class<? extends ICrossReferenceSerializer> bindICrossReferenceSerializer() {
		return NameLinks.class;
	}
}
