package padwright.views.clock;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

import padwright.engine.film.PartialShim;
import padwright.engine.levelling.Budget;
import padwright.engine.levelling.Proof;
import padwright.engine.rim.RimProfile;
import padwright.views.Messages;
import padwright.workup.service.KeyJob;
import padwright.workup.solve.KeySolution;
import padwright.workup.solve.LevelAnswer;
import padwright.workup.solve.PlanSolver;
import padwright.workup.solve.WrittenAnswers;

/**
 * Pieces that would level a pad.
 *
 * @param key the row they are for
 * @param pieces none where the pad is level, or could not be solved
 * @param left the gap they are predicted to leave; nothing where the pad could not be solved
 * @param words how good they are known to be, or why there is no answer; in lines
 */
public record ClockProposal(KeyJob key, List<PartialShim> pieces, Optional<RimProfile> left, List<String> words) {

	public ClockProposal {
		pieces = List.copyOf(pieces);
		words = List.copyOf(words);
	}

	/** Whether there is anything to apply. */
	public boolean isSolved() {
		return left.isPresent();
	}

	/**
	 * Solves a row with the film that the rows before it leave. Takes its time: not for the window's thread.
	 *
	 * @param next told of each row before it is solved; may throw to give up
	 */
	public static ClockProposal solve(KeyJob job, Budget budget, Consumer<KeyJob> next) {
		return PlanSolver.solve(job.plan(), WrittenAnswers.KEEP, budget, next).keys().stream()
				.filter(solved -> solved.job().service() == job.service()).findFirst().map(ClockProposal::of)
				.orElseThrow(() -> new IllegalArgumentException("key " + job.name() + " is not in its plan"));
	}

	private static ClockProposal of(KeySolution solved) {
		return solved.level().map(answer -> of(solved.job(), answer)).orElseGet(
				() -> new ClockProposal(solved.job(), List.of(), Optional.empty(), solved.unsolved()));
	}

	private static ClockProposal of(KeyJob job, LevelAnswer answer) {
		return new ClockProposal(job, answer.solution().pieces(), Optional.of(answer.solution().residual()),
				List.of(words(answer.solution().proof())));
	}

	private static String words(Proof proof) {
		return proof.optimal() ? Messages.of("clock.optimal") : Messages.of("clock.bestFound", proof.bound());
	}
}
