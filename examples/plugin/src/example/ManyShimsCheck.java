package example;

import padwright.model.plan.PlanPackage;
import padwright.workup.checks.Advice;
import padwright.workup.checks.Check;
import padwright.workup.checks.Findings;
import padwright.workup.checks.Place;
import padwright.workup.service.KeyJob;

/** A shop that wants no tall stacks: no more than three full shims under one pad. The limit is invented. */
public final class ManyShimsCheck extends Check<KeyJob> {

	private static final int MOST = 3;

	public ManyShimsCheck() {
		super(KeyJob.class);
	}

	@Override
	protected void check(KeyJob job, Findings findings) {
		if (job.stack().size() > MOST) {
			findings.warning("example.manyShims", Place.of(job.service(), PlanPackage.Literals.KEY_SERVICE__STACK),
					new Advice(job.name() + " has " + job.stack().size() + " full shims", "a tall stack gives way",
							"Take a thicker disc"));
		}
	}
}
