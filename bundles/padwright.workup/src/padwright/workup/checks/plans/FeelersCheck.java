package padwright.workup.checks.plans;

import padwright.model.plan.PlanPackage;
import padwright.workup.checks.Advice;
import padwright.workup.checks.Check;
import padwright.workup.checks.Findings;
import padwright.workup.checks.IssueCodes;
import padwright.workup.checks.Place;
import padwright.workup.service.KeyJob;

/** Readings are made with feelers that are known. */
public final class FeelersCheck extends Check<KeyJob> {

	public FeelersCheck() {
		super(KeyJob.class);
	}

	@Override
	protected void check(KeyJob job, Findings findings) {
		if (!job.service().getRounds().isEmpty() && job.plan().feelers().isEmpty()) {
			findings.warning(IssueCodes.FEELERS_MISSING,
					Place.of(job.service(), PlanPackage.Literals.KEY_SERVICE__ROUNDS),
					new Advice("These readings have no feelers", "without their thicknesses no pad can be levelled",
							"Write with and a stock that lists feelers behind the key system of the plan"));
		}
	}
}
