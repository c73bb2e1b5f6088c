package padwright.workup.checks.plans;

import padwright.engine.length.Length;
import padwright.model.plan.PlanPackage;
import padwright.model.plan.Round;
import padwright.workup.checks.Advice;
import padwright.workup.checks.Check;
import padwright.workup.checks.Findings;
import padwright.workup.checks.IssueCodes;
import padwright.workup.checks.Place;
import padwright.workup.service.KeyJob;
import padwright.workup.solve.FilmStore;
import padwright.workup.solve.FullShims;

/** A change of the full shims can be made: there is as much to take out, and film for it. */
public final class FullChangeCheck extends Check<KeyJob> {

	public FullChangeCheck() {
		super(KeyJob.class);
	}

	@Override
	protected void check(KeyJob job, Findings findings) {
		FullShims full = new FullShims(job.stack());
		for (Round round : job.service().getRounds()) {
			Length change = FullShims.change(round);
			if (!full.shims().isEmpty() && full.sum().plus(change).signum() < 0) {
				findings.error(IssueCodes.FULL_MORE_THAN_STACK, Place.of(round, PlanPackage.Literals.ROUND__FULL),
						Advice.of(IssueCodes.FULL_MORE_THAN_STACK, change.abs(), job.name(), full.sum()));
			} else if (isFilmKnown(job, full) && full.swap(change, FilmStore.thicknesses(job)).isEmpty()) {
				findings.warning(IssueCodes.FULL_NOT_MADE, Place.of(round, PlanPackage.Literals.ROUND__FULL),
						Advice.of(IssueCodes.FULL_NOT_MADE, change.abs(), job.name()));
			}
			full = full.after(round, FilmStore.thicknesses(job));
		}
	}

	private static boolean isFilmKnown(KeyJob job, FullShims full) {
		return !full.shims().isEmpty() && job.fitting().films().isPresent();
	}
}
