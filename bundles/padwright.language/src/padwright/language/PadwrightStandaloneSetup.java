package padwright.language;

import org.eclipse.emf.ecore.EPackage;

import com.google.inject.Injector;

import padwright.model.keysystem.KeySystemPackage;
import padwright.model.plan.PlanPackage;
import padwright.model.stock.StockPackage;

/** Makes the language known where there is no Equinox extension registry. */
public class PadwrightStandaloneSetup extends PadwrightStandaloneSetupGenerated {

	/** Registers the language and its packages; doing so again is harmless. */
	public static Injector doSetup() {
		return new PadwrightStandaloneSetup().createInjectorAndDoEMFRegistration();
	}

	@Override
	public Injector createInjectorAndDoEMFRegistration() {
		EPackage.Registry.INSTANCE.putIfAbsent(KeySystemPackage.eNS_URI, KeySystemPackage.eINSTANCE);
		EPackage.Registry.INSTANCE.putIfAbsent(StockPackage.eNS_URI, StockPackage.eINSTANCE);
		EPackage.Registry.INSTANCE.putIfAbsent(PlanPackage.eNS_URI, PlanPackage.eINSTANCE);
		return super.createInjectorAndDoEMFRegistration();
	}
}
