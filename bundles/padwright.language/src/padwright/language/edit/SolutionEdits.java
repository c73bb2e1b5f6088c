package padwright.language.edit;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

import padwright.model.plan.KeyService;
import padwright.model.plan.Round;
import padwright.workup.solve.HeightAnswer;
import padwright.workup.solve.KeySolution;
import padwright.workup.solve.LevelAnswer;
import padwright.workup.solve.PlanSolution;
import padwright.workup.solve.WrittenAnswers;

/** Puts solved shims into the text of a plan, and touches nothing else in it. */
public final class SolutionEdits {

	private final WrittenAnswers written;

	private SolutionEdits(WrittenAnswers written) {
		this.written = written;
	}

	/** The edits that note a solution in the plan it was made from. */
	public static List<TextEdit> of(PlanSolution solution, WrittenAnswers written) {
		SolutionEdits edits = new SolutionEdits(written);
		return solution.keys().stream().flatMap(edits::of).toList();
	}

	private Stream<TextEdit> of(KeySolution key) {
		List<TextEdit> edits = new ArrayList<>();
		key.height().filter(HeightAnswer::reachesHeight)
				.ifPresent(answer -> edits.addAll(stack(key.job().service(), answer)));
		key.level().ifPresent(answer -> edits.addAll(shims(key.job().lastRound().orElseThrow(), answer)));
		return edits.stream();
	}

	private List<TextEdit> stack(KeyService service, HeightAnswer answer) {
		return isKept(service.getStack() != null) ? List.of() : ShimEdits.stack(service, answer.solution().pieces());
	}

	private List<TextEdit> shims(Round round, LevelAnswer answer) {
		return isKept(round.isLevel() || !round.getPieces().isEmpty()) ? List.of()
				: ShimEdits.pieces(round, answer.solution().pieces());
	}

	private boolean isKept(boolean noted) {
		return noted && written == WrittenAnswers.KEEP;
	}
}
