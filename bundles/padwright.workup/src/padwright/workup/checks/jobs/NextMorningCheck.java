package padwright.workup.checks.jobs;

import padwright.model.plan.PlanPackage;
import padwright.model.plan.Treatment;
import padwright.workup.checks.Advice;
import padwright.workup.checks.Check;
import padwright.workup.checks.Findings;
import padwright.workup.checks.IssueCodes;
import padwright.workup.checks.Place;
import padwright.workup.job.JobRecord;
import padwright.workup.job.PadAtRest;
import padwright.workup.parts.Labels;
import padwright.workup.service.ServicePlan;

/** A pad that was wetted, ironed or clamped is felt again on a later day before it leaves. */
public final class NextMorningCheck extends Check<ServicePlan> {

	public NextMorningCheck() {
		super(ServicePlan.class);
	}

	@Override
	protected void check(ServicePlan plan, Findings findings) {
		JobRecord record = JobRecord.of(plan.plan());
		record.all(Treatment.class).stream().filter(treatment -> treatment.getDate() == null)
				.forEach(treatment -> findings.warning(IssueCodes.NEXT_MORNING,
						Place.of(treatment, PlanPackage.Literals.TREATMENT__KIND), Advice.of("next-morning.undated")));
		if (record.isDelivered()) {
			PadAtRest.of(plan).forEach(pad -> findings.warning(IssueCodes.NEXT_MORNING,
					Place.of(pad.treatment(), PlanPackage.Literals.TREATMENT__KIND), Advice.of(IssueCodes.NEXT_MORNING,
							Labels.ofKey(plan, pad.key().getName()), pad.treatment().getDate())));
		}
	}
}
