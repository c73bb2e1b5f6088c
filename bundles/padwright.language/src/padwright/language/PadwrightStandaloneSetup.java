package padwright.language;

/** Makes the language known where there is no Equinox extension registry. */
public class PadwrightStandaloneSetup extends PadwrightStandaloneSetupGenerated {

	/** Registers the language and its packages; doing so again is harmless. */
	public static void doSetup() {
		new PadwrightStandaloneSetup().createInjectorAndDoEMFRegistration();
	}
}
