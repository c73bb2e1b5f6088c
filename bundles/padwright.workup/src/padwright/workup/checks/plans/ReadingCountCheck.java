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
					new Advice("These readings have no hours", "it is unknown where on the clock they were taken",
							"Write read at 12 3 6 9 in the plan, with the hours you read"));
		} else if (readings != hours) {
			findings.error(IssueCodes.READING_COUNT, place,
					new Advice(readings + " readings for " + hours + " hours",
							"each hour of read at needs one reading, in the same order",
							readings < hours ? "Add the missing readings (. where the finest feeler drags)"
									: "Take the surplus readings away, or list their hours"));
		}
	}
}
