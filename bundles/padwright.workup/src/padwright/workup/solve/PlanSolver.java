package padwright.workup.solve;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

import padwright.engine.length.Length;
import padwright.engine.seating.WhyNothing;
import padwright.model.stock.FilmSet;
import padwright.workup.service.KeyJob;
import padwright.workup.service.ServicePlan;
import padwright.workup.words.Phrase;

/**
 * Solves the rows of a plan in its order, each with the film that those before it have left. A row's height comes
 * before its levelling, as at the bench.
 */
public final class PlanSolver {

	private final FilmStores films;
	private final Obstacles obstacles;
	private final WrittenAnswers written;

	private PlanSolver(ServicePlan plan, WrittenAnswers written) {
		this.films = new FilmStores(plan);
		this.obstacles = new Obstacles(plan);
		this.written = written;
	}

	/**
	 * The answers for all rows.
	 *
	 * @param progress told each row before it is solved
	 */
	public static PlanSolution solve(ServicePlan plan, WrittenAnswers written, Consumer<KeyJob> progress) {
		PlanSolver solver = new PlanSolver(plan, written);
		List<KeySolution> keys = new ArrayList<>();
		for (KeyJob job : plan.jobs()) {
			progress.accept(job);
			keys.add(solver.solved(job));
		}
		return new PlanSolution(plan, keys);
	}

	/** One row that makes no sense stops no other: it is told with its name. */
	private KeySolution solved(KeyJob job) {
		try {
			return solve(job);
		} catch (IllegalArgumentException | ArithmeticException senseless) {
			return unsolved(job, List.of(Phrase.of("unsolved.senseless", senseless.getMessage())));
		}
	}

	private KeySolution solve(KeyJob job) {
		List<Phrase> inTheWay = obstacles.of(job);
		if (!inTheWay.isEmpty()) {
			return unsolved(job, inTheWay);
		}
		Optional<FilmSet> film = job.fitting().films();
		if (film.isEmpty()) {
			return unsolved(job, List.of(Phrase.of("unsolved.noFilm")));
		}
		return solve(job, film.get());
	}

	private static KeySolution unsolved(KeyJob job, List<Phrase> reasons) {
		return new KeySolution(job, Optional.empty(), Optional.empty(), reasons);
	}

	private KeySolution solve(KeyJob job, FilmSet film) {
		List<Phrase> unsolved = new ArrayList<>();
		List<FilmUse> stack = FilmUse.ofStack(job);
		films.giveBack(stack);
		Optional<HeightAnswer> height = height(job, film, unsolved);
		settle(film, stack, job.service().getStack() != null, height.map(answer -> answer.solution().pieces()));

		List<FilmUse> pieces = FilmUse.ofLastRound(job);
		films.giveBack(pieces);
		Optional<LevelAnswer> level = level(job, film, height, unsolved);
		settle(film, pieces, isLevelled(job), level.map(LevelAnswer::films));
		return new KeySolution(job, height, level, unsolved);
	}

	private Optional<LevelAnswer> level(KeyJob job, FilmSet film, Optional<HeightAnswer> height,
			List<Phrase> unsolved) {
		FullShims full = FullShims.atLastRound(job,
				height.map(answer -> answer.solution().pieces()).orElse(List.of()));
		Optional<LevelAnswer> level = new LevelWork(job, full).answer(films.supply(film), unsolved);
		level.flatMap(answer -> answer.seat().whyNothing()).filter(WhyNothing.NO_FILM::equals)
				.ifPresent(none -> unsolved.add(Phrase.of("unsolved.filmOut", film.getName())));
		return level;
	}

	private static boolean isLevelled(KeyJob job) {
		return job.lastRound().filter(PlacedPieces::isAnswered).isPresent();
	}

	/** What is noted stays where it is kept, or where nothing was found to take its place. */
	private void settle(FilmSet film, List<FilmUse> noted, boolean isNoted, Optional<List<Length>> found) {
		if (found.isEmpty() || isNoted && written == WrittenAnswers.KEEP) {
			films.take(noted);
		} else {
			films.take(film, found.get());
		}
	}

	private Optional<HeightAnswer> height(KeyJob job, FilmSet film, List<Phrase> unsolved) {
		Optional<HeightWork> work = HeightWork.of(job);
		if (work.isEmpty()) {
			unsolved.add(Phrase.of("unsolved.noGap"));
			return Optional.empty();
		}
		if (work.get().target().signum() < 0) {
			unsolved.add(Phrase.of("unsolved.noRoom", work.get().shown().sum().abs()));
			return Optional.empty();
		}
		Optional<HeightAnswer> answer = work.get().solution(films.supply(film))
				.map(solution -> new HeightAnswer(work.get(), solution));
		if (answer.isEmpty()) {
			unsolved.add(Phrase.of("unsolved.beyond", work.get().shown().sum()));
		} else if (films.supply(film).stream().allMatch(supply -> supply.pieces() == 0)) {
			unsolved.add(Phrase.of("unsolved.filmOutHeight", film.getName()));
		} else if (!answer.get().reachesHeight()) {
			unsolved.add(Phrase.of("unsolved.notToHeight", work.get().shownError(answer.get().solution().sum()).abs(),
					work.get().shown().sum()));
		}
		return answer;
	}
}
