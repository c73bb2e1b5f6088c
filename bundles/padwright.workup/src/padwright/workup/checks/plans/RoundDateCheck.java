package padwright.workup.checks.plans;

import java.time.LocalDate;

import padwright.model.plan.PlanPackage;
import padwright.model.plan.Round;
import padwright.workup.checks.Advice;
import padwright.workup.checks.Check;
import padwright.workup.checks.Findings;
import padwright.workup.checks.IssueCodes;
import padwright.workup.checks.Place;
import padwright.workup.service.KeyJob;

/** Rounds stand in the order of their days, those as delivered last. */
public final class RoundDateCheck extends Check<KeyJob> {

	public RoundDateCheck() {
		super(KeyJob.class);
	}

	@Override
	protected void check(KeyJob job, Findings findings) {
		LocalDate latest = null;
		for (Round round : job.allRounds()) {
			LocalDate day = round.getDate();
			if (day != null && latest != null && day.isBefore(latest)) {
				findings.warning(IssueCodes.ROUND_DATE, Place.of(round, PlanPackage.Literals.ROUND__DATE),
						Advice.of(IssueCodes.ROUND_DATE, day, latest));
			}
			latest = day == null || latest != null && day.isBefore(latest) ? latest : day;
		}
	}
}
