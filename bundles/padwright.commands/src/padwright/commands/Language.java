package padwright.commands;

import com.google.inject.Injector;

import padwright.language.PadwrightStandaloneSetup;

/** The services of the language, made on first use: commands such as help do without them. */
final class Language {

	private static final class Holder {
		private static final Injector SERVICES = PadwrightStandaloneSetup.doSetup();
	}

	private Language() {
	}

	static Injector services() {
		return Holder.SERVICES;
	}

	/** Services of their own for a thread beside others. */
	static Injector another() {
		services();
		return new PadwrightStandaloneSetup().createInjector();
	}
}
