package padwright.workup.checks.plans;

import java.util.HashSet;
import java.util.Set;

import padwright.model.Resolved;
import padwright.model.keysystem.Key;
import padwright.model.plan.KeyService;
import padwright.model.plan.Plan;
import padwright.model.plan.PlanPackage;
import padwright.workup.checks.Advice;
import padwright.workup.checks.Check;
import padwright.workup.checks.Findings;
import padwright.workup.checks.IssueCodes;
import padwright.workup.checks.Place;

/** A key has one row in a plan. */
public final class DuplicateServiceCheck extends Check<Plan> {

	public DuplicateServiceCheck() {
		super(Plan.class);
	}

	@Override
	protected void check(Plan plan, Findings findings) {
		Set<Key> seen = new HashSet<>();
		for (KeyService service : plan.getKeys()) {
			Resolved.of(service.getKey()).filter(key -> !seen.add(key))
					.ifPresent(key -> findings.error(IssueCodes.DUPLICATE_SERVICE,
							Place.of(service, PlanPackage.Literals.KEY_SERVICE__KEY),
							Advice.of(IssueCodes.DUPLICATE_SERVICE, key.getName())));
		}
	}
}
