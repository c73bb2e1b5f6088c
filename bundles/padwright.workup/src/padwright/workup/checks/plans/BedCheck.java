package padwright.workup.checks.plans;

import padwright.engine.length.Length;
import padwright.model.plan.PlanPackage;
import padwright.workup.checks.Advice;
import padwright.workup.checks.Check;
import padwright.workup.checks.Findings;
import padwright.workup.checks.IssueCodes;
import padwright.workup.checks.Place;
import padwright.workup.service.KeyJob;

/** The full shims sum to what the plan expects. */
public final class BedCheck extends Check<KeyJob> {

	public BedCheck() {
		super(KeyJob.class);
	}

	@Override
	protected void check(KeyJob job, Findings findings) {
		if (job.stack().isEmpty()) {
			return;
		}
		Length sum = job.stackSum();
		job.plan().bed().filter(bed -> !bed.holds(sum))
				.ifPresent(bed -> findings.warning(IssueCodes.STACK_OUTSIDE_BED,
						Place.of(job.service(), PlanPackage.Literals.KEY_SERVICE__STACK),
						Advice.of(IssueCodes.STACK_OUTSIDE_BED, sum, bed.least(), bed.most())));
	}
}
