package padwright.workup.checks.plans;

import padwright.workup.checks.Advice;
import padwright.workup.checks.Check;
import padwright.workup.checks.Findings;
import padwright.workup.checks.IssueCodes;
import padwright.workup.checks.Place;
import padwright.workup.inspection.Recommendation;
import padwright.workup.inspection.RecommendedWork;
import padwright.workup.service.ServicePlan;
import padwright.workup.words.Phrase;

/** What an inspection found asks for work; of empty cups {@link EmptyCupCheck} tells. */
public final class InspectionCheck extends Check<ServicePlan> {

	public InspectionCheck() {
		super(ServicePlan.class);
	}

	@Override
	protected void check(ServicePlan plan, Findings findings) {
		for (Recommendation each : RecommendedWork.ofInspection(plan)) {
			findings.info(IssueCodes.INSPECTION_WORK, Place.of(each.element(), each.feature()),
					new Advice(Phrase.of("inspection-work.what", each.where(), each.found()), each.reason(),
							each.work()));
		}
	}
}
