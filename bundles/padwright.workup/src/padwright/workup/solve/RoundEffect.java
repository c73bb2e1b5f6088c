package padwright.workup.solve;

import java.util.List;
import java.util.Optional;

import padwright.engine.evidence.FeltRound;
import padwright.engine.evidence.FilmInPlace;
import padwright.model.plan.Round;
import padwright.workup.service.KeyJob;

/**
 * What one round of a plan tells, with all that were felt before it: the gap as it was felt, and what becomes of it by what
 * was done after. A model: the feeler decides.
 *
 * @param felt as the readings found it
 * @param after with what was done; empty where nothing is noted
 */
public record RoundEffect(PadGap felt, Optional<PadGap> after) {

	/** Nothing where the readings cannot be used. */
	public static Optional<RoundEffect> of(KeyJob job, Round round) {
		return FeltRounds.upTo(job, round).map(rounds -> of(job, round, rounds));
	}

	private static RoundEffect of(KeyJob job, Round round, List<FeltRound> rounds) {
		FilmInCup found = FilmInCup.at(job, round);
		FilmInCup left = found.after(round);
		return new RoundEffect(gap(job, rounds, found.inPlace()),
				left.equals(found) ? Optional.empty() : Optional.of(gap(job, rounds, left.inPlace())));
	}

	private static PadGap gap(KeyJob job, List<FeltRound> rounds, FilmInPlace film) {
		return PadGap.of(PadBelief.of(job).model(), rounds, film, job.plan().tolerance());
	}

	/** As the pad was left. */
	public PadGap last() {
		return after.orElse(felt);
	}
}
