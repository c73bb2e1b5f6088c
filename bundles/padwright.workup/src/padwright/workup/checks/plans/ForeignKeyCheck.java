package padwright.workup.checks.plans;

import padwright.model.Resolved;
import padwright.model.plan.PlanPackage;
import padwright.workup.checks.Advice;
import padwright.workup.checks.Check;
import padwright.workup.checks.Findings;
import padwright.workup.checks.IssueCodes;
import padwright.workup.checks.Place;
import padwright.workup.service.KeyJob;

/** The rows of a plan are for keys of its system. */
public final class ForeignKeyCheck extends Check<KeyJob> {

	public ForeignKeyCheck() {
		super(KeyJob.class);
	}

	@Override
	protected void check(KeyJob job, Findings findings) {
		if (job.key().isEmpty() && Resolved.of(job.plan().plan().getSystem()).isPresent()) {
			Resolved.of(job.service().getKey()).ifPresent(key -> findings.error(IssueCodes.DRIVEN_KEY_MISSING,
					Place.of(job.service(), PlanPackage.Literals.KEY_SERVICE__KEY),
					Advice.of("driven-key-missing.row", key.getName())));
		}
	}
}
