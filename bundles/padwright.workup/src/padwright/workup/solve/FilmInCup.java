package padwright.workup.solve;

import java.util.ArrayList;
import java.util.List;

import padwright.engine.evidence.FilmInPlace;
import padwright.engine.film.PartialShim;
import padwright.engine.length.Length;
import padwright.model.plan.Round;
import padwright.workup.service.KeyJob;

/**
 * The film behind a pad at one moment, beside the full shims that it was fitted with.
 *
 * @param pieces the partial shims in place, in the order in which they were placed
 * @param fullChange by what the full shims are thicker than when the pad was first felt; below zero where thinner
 */
public record FilmInCup(List<PartialShim> pieces, Length fullChange) {

	/** As a pad is fitted. */
	public static final FilmInCup NONE = new FilmInCup(List.of(), Length.ZERO);

	public FilmInCup {
		pieces = List.copyOf(pieces);
	}

	/** What lay behind the pad when the readings of a round of the row were taken. */
	public static FilmInCup at(KeyJob job, Round felt) {
		FilmInCup film = NONE;
		for (Round round : job.allRounds()) {
			if (round == felt) {
				break;
			}
			film = film.after(round);
		}
		return film;
	}

	/** What will lie behind the pad once the answer is carried out: the noted one, or else the solved one. */
	public static FilmInCup after(KeySolution solution) {
		FilmInCup noted = now(solution.job());
		boolean isNoted = solution.job().lastRound().filter(PlacedPieces::isAnswered).isPresent();
		return isNoted ? noted : solution.level().map(LevelAnswer::seat)
				.map(seat -> noted.after(seat.takeOut(), seat.place(), seat.fullShims())).orElse(noted);
	}

	/** What lies behind the pad after all that the row notes. */
	public static FilmInCup now(KeyJob job) {
		FilmInCup film = NONE;
		for (Round round : job.service().getRounds()) {
			film = film.after(round);
		}
		return film;
	}

	/** As the engine takes it. */
	public FilmInPlace inPlace() {
		return new FilmInPlace(pieces, fullChange);
	}

	/** With what was done after the readings of a round. A piece taken out that is not in place changes nothing. */
	public FilmInCup after(Round round) {
		return after(PlacedPieces.takenOut(round), PlacedPieces.of(round), FullShims.change(round));
	}

	/** With pieces taken out and placed, and the full shims changed. */
	public FilmInCup after(List<PartialShim> out, List<PartialShim> placed, Length change) {
		List<PartialShim> left = new ArrayList<>(pieces);
		out.forEach(left::remove);
		left.addAll(placed);
		return new FilmInCup(left, fullChange.plus(change));
	}
}
