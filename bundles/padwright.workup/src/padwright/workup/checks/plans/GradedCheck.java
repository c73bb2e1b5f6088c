package padwright.workup.checks.plans;

import padwright.model.plan.PlanPackage;
import padwright.model.plan.Round;
import padwright.workup.checks.Advice;
import padwright.workup.checks.Check;
import padwright.workup.checks.Findings;
import padwright.workup.checks.IssueCodes;
import padwright.workup.checks.Place;
import padwright.workup.service.KeyJob;

/** A dash is only read where the plan's readings are graded. */
public final class GradedCheck extends Check<KeyJob> {

	public GradedCheck() {
		super(KeyJob.class);
	}

	@Override
	protected void check(KeyJob job, Findings findings) {
		if (job.plan().plan().isGraded()) {
			return;
		}
		for (Round round : job.allRounds()) {
			for (int index = 0; index < round.getReadings().size(); index++) {
				if (round.getReadings().get(index).lightly()) {
					findings.error(IssueCodes.DASH_NOT_GRADED,
							new Place(round, PlanPackage.Literals.ROUND__READINGS, index),
							Advice.of(IssueCodes.DASH_NOT_GRADED));
				}
			}
		}
	}
}
