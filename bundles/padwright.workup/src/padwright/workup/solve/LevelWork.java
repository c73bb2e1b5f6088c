package padwright.workup.solve;

import java.util.List;
import java.util.Optional;

import padwright.engine.film.FilmSupply;
import padwright.engine.levelling.Budget;
import padwright.engine.levelling.Levelling;
import padwright.engine.levelling.LevellingProblem;
import padwright.engine.rim.RimEstimate;
import padwright.engine.rim.RimFit;
import padwright.engine.rim.RimReading;
import padwright.workup.service.KeyJob;
import padwright.workup.words.Messages;

/** The levelling of one pad after its last round of readings. */
final class LevelWork {

	private final KeyJob job;
	private final Budget budget;

	LevelWork(KeyJob job, Budget budget) {
		this.job = job;
		this.budget = budget;
	}

	/** The answer with the film on hand; nothing, with the reason added to {@code unsolved}, where there is none. */
	Optional<LevelAnswer> answer(List<FilmSupply> supply, List<String> unsolved) {
		return readings(unsolved).map(readings -> level(RimFit.fit(readings), supply));
	}

	private LevelAnswer level(RimEstimate rim, List<FilmSupply> supply) {
		List<FilmSupply> films = supply.stream().filter(film -> film.pieces() > 0).toList();
		PadStiffness pad = PadStiffness.of(job);
		LevellingProblem problem = new LevellingProblem(rim.profile(), pad.stiffness(), films,
				job.plan().tolerance(), LevellingProblem.MOST_PIECES);
		return new LevelAnswer(rim, problem, Levelling.solve(problem, budget), pad.assumed());
	}

	private Optional<List<RimReading>> readings(List<String> unsolved) {
		if (job.lastRound().isEmpty()) {
			unsolved.add(Messages.of("unsolved.notFelt"));
		}
		return job.lastRound()
				.flatMap(round -> RoundReadings.of(job, round,
						why -> unsolved.add(Messages.of("unsolved.notLevelled", why))));
	}
}
