package padwright.workup.checks.plans;

import padwright.model.Resolved;
import padwright.model.keysystem.Key;
import padwright.model.plan.PlanPackage;
import padwright.model.plan.Regulation;
import padwright.model.systems.EffectiveKey;
import padwright.workup.checks.Advice;
import padwright.workup.checks.Check;
import padwright.workup.checks.Findings;
import padwright.workup.checks.IssueCodes;
import padwright.workup.checks.Place;
import padwright.workup.service.ServicePlan;

/** Only coupled keys are regulated. */
public final class RegulationCheck extends Check<ServicePlan> {

	public RegulationCheck() {
		super(ServicePlan.class);
	}

	@Override
	protected void check(ServicePlan service, Findings findings) {
		for (Regulation regulation : service.plan().getRegulations()) {
			Resolved.of(regulation.getDriven()).ifPresent(driven -> Resolved.of(regulation.getDriver())
					.flatMap(service.system()::key).filter(driver -> !drives(driver, driven))
					.ifPresent(driver -> findings.error(IssueCodes.NOT_COUPLED,
							Place.of(regulation, PlanPackage.Literals.REGULATION__DRIVEN),
							Advice.of(IssueCodes.NOT_COUPLED, driver.name(), driven.getName()))));
		}
	}

	private static boolean drives(EffectiveKey driver, Key driven) {
		return driver.closes().stream().anyMatch(coupling -> coupling.getDriven() == driven);
	}
}
