package padwright.workup.solve;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

import padwright.engine.length.Length;
import padwright.engine.levelling.Budget;
import padwright.model.stock.FilmSet;
import padwright.workup.service.KeyJob;
import padwright.workup.service.ServicePlan;

/**
 * Solves the rows of a plan in its order, each with the film that those before it have left. A row's height comes
 * before its levelling, as at the bench.
 */
public final class PlanSolver {

	private final FilmStores films;
	private final Obstacles obstacles;
	private final WrittenAnswers written;
	private final Budget budget;

	private PlanSolver(ServicePlan plan, WrittenAnswers written, Budget budget) {
		this.films = new FilmStores(plan);
		this.obstacles = new Obstacles(plan);
		this.written = written;
		this.budget = budget;
	}

	/**
	 * The answers for all rows.
	 *
	 * @param budget how long each levelling may search
	 * @param progress told each row before it is solved
	 */
	public static PlanSolution solve(ServicePlan plan, WrittenAnswers written, Budget budget,
			Consumer<KeyJob> progress) {
		PlanSolver solver = new PlanSolver(plan, written, budget);
		List<KeySolution> keys = new ArrayList<>();
		for (KeyJob job : plan.jobs()) {
			progress.accept(job);
			keys.add(solver.solve(job));
		}
		return new PlanSolution(plan, keys);
	}

	private KeySolution solve(KeyJob job) {
		List<String> inTheWay = obstacles.of(job);
		if (!inTheWay.isEmpty()) {
			return unsolved(job, inTheWay);
		}
		Optional<FilmSet> film = job.fitting().films();
		if (film.isEmpty()) {
			return unsolved(job,
					List.of("no shim film is named: write with and a film of the stock behind the pad in fit"));
		}
		return solve(job, film.get());
	}

	private static KeySolution unsolved(KeyJob job, List<String> reasons) {
		return new KeySolution(job, Optional.empty(), Optional.empty(), reasons);
	}

	private KeySolution solve(KeyJob job, FilmSet film) {
		List<String> unsolved = new ArrayList<>();
		List<FilmUse> stack = FilmUse.ofStack(job);
		films.giveBack(stack);
		Optional<HeightAnswer> height = height(job, film, unsolved);
		settle(film, stack, job.service().getStack() != null, height.map(answer -> answer.solution().pieces()));

		List<FilmUse> pieces = FilmUse.ofLastPieces(job);
		films.giveBack(pieces);
		Optional<LevelAnswer> level = new LevelWork(job, budget).answer(films.supply(film), unsolved);
		settle(film, pieces, isLevelled(job), level.map(LevelAnswer::films));
		level.map(answer -> answer.solution().excess()).filter(excess -> excess.signum() > 0)
				.ifPresent(excess -> unsolved.add("not level: film alone leaves " + excess
						+ " more than the seat allows; true the cup or the key first, and never file the rim"));
		return new KeySolution(job, height, level, unsolved);
	}

	private static boolean isLevelled(KeyJob job) {
		return job.lastRound().filter(round -> round.isLevel() || !round.getPieces().isEmpty()).isPresent();
	}

	/** What is noted stays where it is kept, or where nothing was found to take its place. */
	private void settle(FilmSet film, List<FilmUse> noted, boolean isNoted, Optional<List<Length>> found) {
		if (found.isEmpty() || isNoted && written == WrittenAnswers.KEEP) {
			films.take(noted);
		} else {
			films.take(film, found.get());
		}
	}

	private Optional<HeightAnswer> height(KeyJob job, FilmSet film, List<String> unsolved) {
		Optional<HeightWork> work = HeightWork.of(job);
		if (work.isEmpty()) {
			unsolved.add("no height: measure the gap around the empty cup and write it behind empty");
			return Optional.empty();
		}
		if (work.get().target().signum() < 0) {
			unsolved.add("no height: pad and stabiliser fill the cup by " + work.get().target().abs()
					+ " more than it holds; choose thinner ones");
			return Optional.empty();
		}
		Optional<HeightAnswer> answer = work.get().solution(films.supply(film))
				.map(solution -> new HeightAnswer(work.get(), solution));
		if (answer.isEmpty()) {
			unsolved.add("no height: full shims of " + work.get().target()
					+ " are far beyond any instrument; measure again, or correct the unit");
		} else if (!answer.get().reachesHeight()) {
			unsolved.add("not to height: the film left comes no nearer than " + answer.get().solution().error().abs()
					+ " to " + work.get().target() + "; order film, or fit something else");
		}
		return answer;
	}
}
