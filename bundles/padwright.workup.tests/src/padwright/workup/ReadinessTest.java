package padwright.workup;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Optional;

import org.junit.jupiter.api.Test;

import padwright.model.keysystem.KeysystemFactory;
import padwright.model.plan.Plan;
import padwright.model.plan.PlanFactory;
import padwright.model.stock.StockFactory;

class ReadinessTest {

	private final Plan plan = PlanFactory.eINSTANCE.createPlan();

	@Test
	void planWithoutSystemLacksIt() {
		assertEquals(Optional.of("key system"), Readiness.lacking(plan));
	}

	@Test
	void planWithSystemAndStockLacksNothing() {
		plan.setSystem(KeysystemFactory.eINSTANCE.createKeySystem());
		plan.setStock(StockFactory.eINSTANCE.createStock());
		assertEquals(Optional.empty(), Readiness.lacking(plan));
	}
}
