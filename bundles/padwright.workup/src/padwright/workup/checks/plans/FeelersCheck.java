package padwright.workup.checks.plans;

import padwright.model.plan.PlanPackage;
import padwright.workup.checks.Advice;
import padwright.workup.checks.Check;
import padwright.workup.checks.Findings;
import padwright.workup.checks.IssueCodes;
import padwright.workup.checks.Place;
import padwright.workup.service.KeyJob;

/** Where a pad is to be levelled with film, the feelers of its readings are known. */
public final class FeelersCheck extends Check<KeyJob> {

	public FeelersCheck() {
		super(KeyJob.class);
	}

	@Override
	protected void check(KeyJob job, Findings findings) {
		boolean isToBeLevelled = !job.service().getRounds().isEmpty() && job.fitting().films().isPresent();
		if (isToBeLevelled && job.plan().feelers().isEmpty()) {
			findings.warning(IssueCodes.FEELERS_MISSING,
					Place.of(job.service(), PlanPackage.Literals.KEY_SERVICE__ROUNDS),
					Advice.of(IssueCodes.FEELERS_MISSING));
		}
	}
}
