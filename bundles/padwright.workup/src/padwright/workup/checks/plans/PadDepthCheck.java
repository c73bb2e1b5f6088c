package padwright.workup.checks.plans;

import padwright.model.Lengths;
import padwright.model.plan.PlanPackage;
import padwright.workup.checks.Advice;
import padwright.workup.checks.Check;
import padwright.workup.checks.Findings;
import padwright.workup.checks.IssueCodes;
import padwright.workup.checks.Place;
import padwright.workup.service.KeyJob;

/** A backing disc leaves room in the cup for the pad. */
public final class PadDepthCheck extends Check<KeyJob> {

	public PadDepthCheck() {
		super(KeyJob.class);
	}

	@Override
	protected void check(KeyJob job, Findings findings) {
		job.key().flatMap(key -> key.cupDepth()).ifPresent(depth -> job.fitting().backing()
				.flatMap(disc -> Lengths.of(disc.getThickness(), disc))
				.filter(disc -> !disc.isShorterThan(depth))
				.ifPresent(disc -> findings.error(IssueCodes.PAD_DEPTH,
						Place.of(job.service(), PlanPackage.Literals.KEY_SERVICE__KEY),
						Advice.of(IssueCodes.PAD_DEPTH, disc, job.name(), depth))));
	}
}
