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
import padwright.workup.words.Phrase;

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
		return Advice.of(IssueCodes.NO_ROOM_FOR_SHIMS, job.name(), work.shown().sum().abs());
	}

	private static Advice off(KeyJob job, HeightWork work, String cure) {
		Length error = work.shownError(job.stackSum());
		Phrase what = error.signum() > 0 ? Phrase.of("stack-height.high", job.name(), job.stackSum(), error.abs())
				: Phrase.of("stack-height.low", job.name(), job.stackSum(), error.abs());
		return new Advice(what, Phrase.of("stack-height.why", work.basis(), work.shown().sum()),
				cure.isEmpty() ? Phrase.of("stack-height.noFilm") : Phrase.of("stack-height.use", cure));
	}

	private static String cure(KeyJob job, HeightWork work) {
		return work.solution().map(HeightSolution::pieces).filter(pieces -> !work.isOff(pieces))
				.map(pieces -> LengthText.row(pieces, job.service())).orElse("");
	}
}
