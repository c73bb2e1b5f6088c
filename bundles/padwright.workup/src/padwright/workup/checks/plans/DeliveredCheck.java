package padwright.workup.checks.plans;

import java.util.Optional;

import padwright.engine.length.Length;
import padwright.engine.length.LengthUnit;
import padwright.model.Lengths;
import padwright.model.plan.PlanPackage;
import padwright.model.plan.Round;
import padwright.workup.checks.Advice;
import padwright.workup.checks.Check;
import padwright.workup.checks.Findings;
import padwright.workup.checks.IssueCodes;
import padwright.workup.checks.Place;
import padwright.workup.service.KeyJob;

/** What leaves the shop is right: it does not get better by settling (common practice, no source). */
public final class DeliveredCheck extends Check<KeyJob> {

	public DeliveredCheck() {
		super(KeyJob.class);
	}

	@Override
	protected void check(KeyJob job, Findings findings) {
		Round delivered = job.service().getDelivered();
		if (delivered == null) {
			return;
		}
		LengthUnit unit = Lengths.unit(delivered.getUnit(), delivered);
		for (int index = 0; index < delivered.getReadings().size(); index++) {
			Optional<Length> open = delivered.getReadings().get(index).free()
					.flatMap(number -> Lengths.exact(number, unit)).filter(job.plan().tolerance()::isShorterThan);
			if (open.isPresent()) {
				findings.warning(IssueCodes.DELIVERED_OPEN,
						new Place(delivered, PlanPackage.Literals.ROUND__READINGS, index),
						Advice.of(IssueCodes.DELIVERED_OPEN, open.get(), job.plan().tolerance()));
			}
		}
	}
}
