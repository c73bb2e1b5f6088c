package padwright.workup.checks.plans;

import padwright.model.plan.PlanPackage;
import padwright.model.plan.Round;
import padwright.workup.checks.Advice;
import padwright.workup.checks.Check;
import padwright.workup.checks.Findings;
import padwright.workup.checks.IssueCodes;
import padwright.workup.checks.Place;
import padwright.workup.service.KeyJob;
import padwright.workup.solve.FilmInCup;

/** No more pieces lie behind a pad than a bench can keep apart. */
public final class PieceCountCheck extends Check<KeyJob> {

	/** Most pieces in place (common practice, no source). */
	private static final int MOST = 4;

	public PieceCountCheck() {
		super(KeyJob.class);
	}

	@Override
	protected void check(KeyJob job, Findings findings) {
		FilmInCup film = FilmInCup.NONE;
		for (Round round : job.service().getRounds()) {
			film = film.after(round);
			if (film.pieces().size() > MOST && !round.getPieces().isEmpty()) {
				findings.warning(IssueCodes.TOO_MANY_PIECES, Place.of(round, PlanPackage.Literals.ROUND__PIECES),
						Advice.of(IssueCodes.TOO_MANY_PIECES, film.pieces().size(), job.name(), MOST));
			}
		}
	}
}
