package padwright.workup.solve;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

import padwright.engine.evidence.FeltRound;
import padwright.engine.film.FilmSupply;
import padwright.engine.length.Length;
import padwright.engine.seating.SeatAnswer;
import padwright.engine.seating.SeatProblem;
import padwright.engine.seating.Seating;
import padwright.workup.remember.Remembered;
import padwright.workup.service.KeyJob;
import padwright.workup.words.Phrase;

/** The levelling of one pad after all its rounds. */
final class LevelWork {

	/** By how much full shims are changed at most in one round; more is a matter of height. */
	private static final int MOST_STEPS = 4;
	private static final Remembered<SeatProblem, SeatAnswer> KNOWN = new Remembered<>(400, Seating::solve);

	private final KeyJob job;
	private final FullShims full;

	/** @param full the shims under the pad when it was last felt */
	LevelWork(KeyJob job, FullShims full) {
		this.job = job;
		this.full = full;
	}

	/** The answer with the film on hand; nothing, with the reason added to {@code unsolved}, where there is none. */
	Optional<LevelAnswer> answer(List<FilmSupply> supply, List<Phrase> unsolved) {
		return rounds(unsolved).map(rounds -> solve(rounds, supply));
	}

	private LevelAnswer solve(List<FeltRound> rounds, List<FilmSupply> supply) {
		List<FilmSupply> films = supply.stream().filter(film -> film.pieces() > 0).map(LevelWork::enough).toList();
		List<Length> thicknesses = films.stream().map(FilmSupply::thickness).toList();
		PadBelief pad = PadBelief.of(job);
		SeatProblem problem = new SeatProblem(pad.model(), rounds, rounds.get(rounds.size() - 1).film(), films,
				steps(thicknesses), job.plan().tolerance(), PadBelief.prices(job));
		SeatAnswer seat = KNOWN.of(problem);
		return new LevelAnswer(pad, problem, seat, swap(seat.fullShims(), thicknesses));
	}

	/** More than can ever lie behind one pad is as good as any number, so that rows before it change nothing. */
	private static FilmSupply enough(FilmSupply film) {
		return new FilmSupply(film.thickness(), Math.min(film.pieces(), SeatProblem.MOST_PIECES));
	}

	/** The changes of the full shims that the film on hand makes: by the thinnest film and some times of it, either way. */
	private List<Length> steps(List<Length> films) {
		return films.stream().findFirst().stream().flatMap(thinnest -> Stream.iterate(1, count -> count + 1)
				.limit(MOST_STEPS).map(thinnest::times).flatMap(step -> Stream.of(step, step.negated())))
				.filter(step -> isMade(step, films)).toList();
	}

	/** Where the shims under the pad are not known, one film more can be laid and one taken away. */
	private boolean isMade(Length step, List<Length> films) {
		return full.shims().isEmpty() ? films.contains(step.abs()) : full.swap(step, films).isPresent();
	}

	private FullShims.Swap swap(Length change, List<Length> films) {
		return full.swap(change, films).orElse(new FullShims.Swap(List.of(), List.of()));
	}

	private Optional<List<FeltRound>> rounds(List<Phrase> unsolved) {
		if (job.lastRound().isEmpty()) {
			unsolved.add(Phrase.of("unsolved.notFelt"));
			return Optional.empty();
		}
		return FeltRounds.of(job, why -> unsolved.add(Phrase.of("unsolved.notLevelled", why)));
	}
}
