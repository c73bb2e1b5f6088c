package padwright.workup.checks.plans;

import padwright.engine.height.HeightSolution;
import padwright.engine.length.Length;
import padwright.model.LengthText;
import padwright.model.plan.PlanPackage;
import padwright.workup.checks.Advice;
import padwright.workup.checks.Check;
import padwright.workup.checks.Findings;
import padwright.workup.checks.IssueCodes;
import padwright.workup.checks.Place;
import padwright.workup.service.KeyJob;
import padwright.workup.solve.HeightWork;

/** The full shims bring the pad to height. */
public final class StackHeightCheck extends Check<KeyJob> {

	public StackHeightCheck() {
		super(KeyJob.class);
	}

	@Override
	protected void check(KeyJob job, Findings findings) {
		HeightWork.of(job).ifPresent(work -> {
			Place place = job.stack().isEmpty() ? Place.of(job.service(), PlanPackage.Literals.KEY_SERVICE__EMPTY)
					: Place.of(job.service(), PlanPackage.Literals.KEY_SERVICE__STACK);
			if (work.target().signum() < 0) {
				findings.error(IssueCodes.NO_ROOM_FOR_SHIMS, place, noRoom(job, work));
			} else if (!job.stack().isEmpty() && work.isOff(job.stack())) {
				String cure = cure(job, work);
				findings.add(work.severity(job.stack()), IssueCodes.STACK_HEIGHT, place, off(job, work, cure), cure);
			}
		});
	}

	private static Advice noRoom(KeyJob job, HeightWork work) {
		return new Advice("Pad and stabiliser fill the cup of " + job.name() + " by " + work.target().abs()
				+ " more than it holds",
				"with no shim at all the pad stands too high and closes at the hinge side first",
				"Choose a thinner pad or stabiliser, or measure depth and empty gap again");
	}

	private static Advice off(KeyJob job, HeightWork work, String cure) {
		Length error = job.stackSum().minus(work.target());
		return new Advice("The full shims of " + job.name() + " sum to " + job.stackSum() + ", " + error.abs()
				+ (error.signum() > 0 ? " too high" : " too low"),
				work.basis() + " asks for " + work.target(),
				cure.isEmpty() ? "No film of the set in stock does better; fit something else, or order film"
						: "Use " + cure);
	}

	private static String cure(KeyJob job, HeightWork work) {
		return work.solution().map(HeightSolution::pieces).filter(pieces -> !work.isOff(pieces))
				.map(pieces -> LengthText.row(pieces, job.service())).orElse("");
	}
}
