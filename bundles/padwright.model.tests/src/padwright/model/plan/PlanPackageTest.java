package padwright.model.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;

import org.eclipse.emf.ecore.EPackage;
import org.junit.jupiter.api.Test;

import padwright.model.keysystem.KeysystemPackage;

class PlanPackageTest {

	@Test
	void packageIsRegisteredUnderItsUri() {
		assertSame(PlanPackage.eINSTANCE, EPackage.Registry.INSTANCE.getEPackage(PlanPackage.eNS_URI));
	}

	@Test
	void systemOfAPlanIsAKeySystem() {
		assertEquals(KeysystemPackage.Literals.KEY_SYSTEM, PlanPackage.Literals.PLAN__SYSTEM.getEReferenceType());
	}
}
