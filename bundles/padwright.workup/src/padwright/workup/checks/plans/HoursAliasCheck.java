package padwright.workup.checks.plans;

import java.util.List;
import java.util.stream.Collectors;

import padwright.engine.clock.ClockHour;
import padwright.model.plan.PlanPackage;
import padwright.model.plan.Round;
import padwright.workup.checks.Advice;
import padwright.workup.checks.Check;
import padwright.workup.checks.Findings;
import padwright.workup.checks.IssueCodes;
import padwright.workup.checks.Place;
import padwright.workup.service.KeyJob;
import padwright.workup.solve.BlindHours;

/** A key is not felt round after round at hours between which a saddle hides. */
public final class HoursAliasCheck extends Check<KeyJob> {

	public HoursAliasCheck() {
		super(KeyJob.class);
	}

	@Override
	protected void check(KeyJob job, Findings findings) {
		List<Round> rounds = job.service().getRounds();
		for (int index = 1; index < rounds.size(); index++) {
			List<ClockHour> hours = job.hours(rounds.get(index));
			List<ClockHour> felt = rounds.stream().limit(index + 1L).flatMap(round -> job.hours(round).stream())
					.distinct().toList();
			if (felt.size() == hours.stream().distinct().count() && BlindHours.are(hours)) {
				findings.info(IssueCodes.HOURS_ALIAS,
						Place.of(rounds.get(index), PlanPackage.Literals.ROUND__READINGS),
						Advice.of(IssueCodes.HOURS_ALIAS, hours.size(), BlindHours.between(hours),
								BlindHours.turned(hours).stream().map(ClockHour::toString)
										.collect(Collectors.joining(" "))));
			}
		}
	}
}
