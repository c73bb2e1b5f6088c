package padwright.workup.checks.jobs;

import java.time.LocalDate;

import padwright.model.plan.Arrival;
import padwright.model.plan.Delivery;
import padwright.model.plan.Deposit;
import padwright.model.plan.Invoice;
import padwright.model.plan.JobEntry;
import padwright.model.plan.Plan;
import padwright.model.plan.PlanPackage;
import padwright.model.plan.SecondLook;
import padwright.workup.checks.Advice;
import padwright.workup.checks.Check;
import padwright.workup.checks.Findings;
import padwright.workup.checks.IssueCodes;
import padwright.workup.checks.Place;
import padwright.workup.job.JobRecord;

/** Nothing is done before an instrument came, and no work after it went home. */
public final class EntryDateCheck extends Check<Plan> {

	public EntryDateCheck() {
		super(Plan.class);
	}

	@Override
	protected void check(Plan plan, Findings findings) {
		JobRecord record = JobRecord.of(plan);
		for (JobEntry entry : record.all(JobEntry.class)) {
			LocalDate day = entry.getDate();
			if (day == null || entry instanceof Arrival || entry instanceof Delivery) {
				continue;
			}
			record.came().filter(day::isBefore).ifPresent(came -> findings.warning(IssueCodes.ENTRY_DATE, place(entry),
					Advice.of("entry-date.early", day, came)));
			record.delivered().filter(home -> isWork(entry) && day.isAfter(home)).ifPresent(home -> findings.warning(
					IssueCodes.ENTRY_DATE, place(entry), Advice.of("entry-date.late", day, home)));
		}
	}

	private static boolean isWork(JobEntry entry) {
		return !(entry instanceof SecondLook || entry instanceof Invoice || entry instanceof Deposit);
	}

	private static Place place(JobEntry entry) {
		return Place.of(entry, PlanPackage.Literals.JOB_ENTRY__DATE);
	}
}
