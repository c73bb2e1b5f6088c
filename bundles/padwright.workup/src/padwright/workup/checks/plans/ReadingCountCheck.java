package padwright.workup.checks.plans;

import padwright.model.plan.PlanPackage;
import padwright.model.plan.Round;
import padwright.model.plan.ThicknessRow;
import padwright.workup.checks.Advice;
import padwright.workup.checks.Check;
import padwright.workup.checks.Findings;
import padwright.workup.checks.IssueCodes;
import padwright.workup.checks.Place;
import padwright.workup.service.KeyJob;

/** A row has one reading for each hour. */
public final class ReadingCountCheck extends Check<KeyJob> {

	public ReadingCountCheck() {
		super(KeyJob.class);
	}

	@Override
	protected void check(KeyJob job, Findings findings) {
		ThicknessRow empty = job.service().getEmpty();
		if (empty != null) {
			int hours = job.plan().plan().getHours().size();
			compare(empty.getValues().size(), hours, Place.of(empty, PlanPackage.Literals.THICKNESS_ROW__VALUES),
					findings);
		}
		for (Round round : job.allRounds()) {
			compare(round.getReadings().size(), job.hours(round).size(),
					Place.of(round, PlanPackage.Literals.ROUND__READINGS), findings);
		}
	}

	private static void compare(int readings, int hours, Place place, Findings findings) {
		if (hours == 0) {
			findings.error(IssueCodes.HOURS_MISSING, place,
					Advice.of(IssueCodes.HOURS_MISSING));
		} else if (readings != hours) {
			findings.error(IssueCodes.READING_COUNT, place, readings < hours
					? Advice.of("reading-count.few", readings, hours)
					: Advice.of("reading-count.many", readings, hours));
		}
	}
}
