package padwright.language.ide;

import org.eclipse.xtext.util.Modules2;

import com.google.inject.Guice;
import com.google.inject.Injector;

import padwright.language.PadwrightRuntimeModule;
import padwright.language.PadwrightStandaloneSetup;

/** Makes the language with its editor services known where there is no Equinox extension registry. */
public class PadwrightIdeSetup extends PadwrightStandaloneSetup {

	@Override
	public Injector createInjector() {
		return Guice.createInjector(Modules2.mixin(new PadwrightRuntimeModule(), new PadwrightIdeModule()));
	}
}
