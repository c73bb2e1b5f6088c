package padwright.workup.checks.jobs;

import java.util.List;

import padwright.model.plan.Agreement;
import padwright.model.plan.EstimateOption;
import padwright.model.plan.PlanPackage;
import padwright.workup.checks.Advice;
import padwright.workup.checks.Check;
import padwright.workup.checks.Findings;
import padwright.workup.checks.IssueCodes;
import padwright.workup.checks.Place;
import padwright.workup.job.JobRecord;
import padwright.workup.money.PlanMoney;
import padwright.workup.service.ServicePlan;
import padwright.workup.words.NearestName;

/** What is agreed on was offered. */
public final class AgreementCheck extends Check<ServicePlan> {

	public AgreementCheck() {
		super(ServicePlan.class);
	}

	@Override
	protected void check(ServicePlan plan, Findings findings) {
		List<String> offered = new PlanMoney(plan).options().stream().map(EstimateOption::getName)
				.filter(name -> name != null).toList();
		for (Agreement agreement : JobRecord.of(plan.plan()).all(Agreement.class)) {
			Place place = Place.of(agreement, PlanPackage.Literals.AGREEMENT__OPTION);
			if (offered.isEmpty()) {
				findings.error(IssueCodes.OPTION_UNKNOWN, place, Advice.of("option-unknown.none"));
			} else if (agreement.getOption() != null && !offered.contains(agreement.getOption())) {
				findings.error(IssueCodes.OPTION_UNKNOWN, place,
						Advice.of(IssueCodes.OPTION_UNKNOWN, agreement.getOption(), String.join(", ", offered)),
						NearestName.among(offered, agreement.getOption()));
			}
		}
	}
}
