package padwright.workup.checks.jobs;

import java.util.List;

import padwright.model.plan.Delivery;
import padwright.model.plan.PlanPackage;
import padwright.workup.checks.Advice;
import padwright.workup.checks.Check;
import padwright.workup.checks.Findings;
import padwright.workup.checks.IssueCodes;
import padwright.workup.checks.Place;
import padwright.workup.job.JobRecord;
import padwright.workup.job.OpenWork;
import padwright.workup.service.ServicePlan;
import padwright.workup.words.Listed;
import padwright.workup.words.Phrase;

/** What was begun is said as done before an instrument goes home. */
public final class DeliveredUndoneCheck extends Check<ServicePlan> {

	public DeliveredUndoneCheck() {
		super(ServicePlan.class);
	}

	@Override
	protected void check(ServicePlan plan, Findings findings) {
		List<Phrase> open = OpenWork.of(plan);
		if (!open.isEmpty()) {
			JobRecord.of(plan.plan()).last(Delivery.class).ifPresent(home -> findings.warning(IssueCodes.DELIVERED_UNDONE,
					Place.of(home, PlanPackage.Literals.JOB_ENTRY__DATE),
					Advice.of(IssueCodes.DELIVERED_UNDONE, new Listed(open, "; "))));
		}
	}
}
