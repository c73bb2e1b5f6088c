package padwright.workup.checks.plans;

import padwright.model.plan.PlanPackage;
import padwright.model.stocks.PadFigures;
import padwright.workup.checks.Advice;
import padwright.workup.checks.Check;
import padwright.workup.checks.Findings;
import padwright.workup.checks.IssueCodes;
import padwright.workup.checks.Place;
import padwright.workup.service.KeyJob;

/** A pad that needs a backing disc has one. */
public final class BackingCheck extends Check<KeyJob> {

	public BackingCheck() {
		super(KeyJob.class);
	}

	@Override
	protected void check(KeyJob job, Findings findings) {
		job.fitting().pad().filter(pad -> PadFigures.needsBacking(pad) && job.fitting().backing().isEmpty())
				.ifPresent(pad -> findings.error(IssueCodes.BACKING_MISSING,
						Place.of(job.service(), PlanPackage.Literals.KEY_SERVICE__KEY),
						Advice.of(IssueCodes.BACKING_MISSING, pad.getName(), job.name())));
	}
}
