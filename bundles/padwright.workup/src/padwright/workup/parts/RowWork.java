package padwright.workup.parts;

import java.util.List;
import java.util.Optional;

import padwright.engine.film.PartialShim;
import padwright.engine.length.Length;
import padwright.engine.seating.SeatAnswer;
import padwright.model.plan.Round;
import padwright.workup.service.KeyJob;
import padwright.workup.solve.FilmInCup;
import padwright.workup.solve.FullShims;
import padwright.workup.solve.KeySolution;
import padwright.workup.solve.LevelAnswer;
import padwright.workup.solve.PlacedPieces;
import padwright.workup.solve.PlanSolution;

/**
 * The film of one row of a plan: what the row notes and, where it notes nothing yet, what was solved.
 *
 * @param stack the full shims, with all changes that the row notes
 * @param stackNoted whether the plan notes them
 * @param earlierPieces the partial shims that lay behind the pad at its last readings; always noted
 * @param takenOut those of them that come out after the last readings
 * @param pieces the partial shims of the last round
 * @param fullChange by what the full shims are changed after the last readings, below zero for less; part of the stack
 *     where that is noted
 * @param piecesNoted whether the plan notes what is done after the last readings, even that nothing is
 */
public record RowWork(KeyJob job, List<Length> stack, boolean stackNoted, List<PartialShim> earlierPieces,
		List<PartialShim> takenOut, List<PartialShim> pieces, Length fullChange, boolean piecesNoted) {

	public RowWork {
		stack = List.copyOf(stack);
		earlierPieces = List.copyOf(earlierPieces);
		takenOut = List.copyOf(takenOut);
		pieces = List.copyOf(pieces);
	}

	/** The rows of a solved plan, in its order. */
	public static List<RowWork> of(PlanSolution solution) {
		return solution.keys().stream().map(RowWork::of).toList();
	}

	/** One solved row. */
	public static RowWork of(KeySolution solution) {
		KeyJob job = solution.job();
		List<Length> noted = FullShims.now(job).shims();
		List<Length> stack = noted.isEmpty()
				? solution.height().map(answer -> answer.solution().pieces()).orElse(List.of()) : noted;
		Optional<Round> answered = job.lastRound().filter(PlacedPieces::isAnswered);
		Optional<SeatAnswer> seat = answered.isPresent() ? Optional.empty()
				: solution.level().map(LevelAnswer::seat);
		return new RowWork(job, stack, !noted.isEmpty(), earlierPieces(job),
				answered.map(PlacedPieces::takenOut).or(() -> seat.map(SeatAnswer::takeOut)).orElse(List.of()),
				answered.map(PlacedPieces::of).or(() -> seat.map(SeatAnswer::place)).orElse(List.of()),
				answered.map(FullShims::change).or(() -> seat.map(SeatAnswer::fullShims)).orElse(Length.ZERO),
				answered.isPresent());
	}

	/** The partial shims that lay behind the pad at its last readings. */
	public static List<PartialShim> earlierPieces(KeyJob job) {
		return job.lastRound().map(round -> FilmInCup.at(job, round).pieces()).orElse(List.of());
	}

	/** How wide the pad is that goes into the cup, if it is known. */
	public Optional<Length> padDiameter() {
		return Article.pad(job).flatMap(Article::size);
	}
}
