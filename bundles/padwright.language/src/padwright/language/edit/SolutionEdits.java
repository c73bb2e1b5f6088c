package padwright.language.edit;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

import padwright.engine.seating.SeatAnswer;
import padwright.engine.seating.WhyNothing;
import padwright.model.plan.KeyService;
import padwright.model.plan.Round;
import padwright.workup.solve.HeightAnswer;
import padwright.workup.solve.KeySolution;
import padwright.workup.solve.PlacedPieces;
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
		key.level().ifPresent(answer -> edits.addAll(done(key.job().lastRound().orElseThrow(), answer.seat())));
		return edits.stream();
	}

	private List<TextEdit> stack(KeyService service, HeightAnswer answer) {
		return isKept(service.getStack() != null) ? List.of() : ShimEdits.stack(service, answer.solution().pieces());
	}

	/** A pad that is held off, or that no film helps, is left as it was felt: there is nothing to note. */
	private List<TextEdit> done(Round round, SeatAnswer seat) {
		boolean isNews = seat.whyNothing().filter(why -> why != WhyNothing.LEVEL_ENOUGH).isPresent();
		return isNews || isKept(PlacedPieces.isAnswered(round)) ? List.of()
				: ShimEdits.done(round, seat.fullShims(), seat.takeOut(), seat.place());
	}

	private boolean isKept(boolean noted) {
		return noted && written == WrittenAnswers.KEEP;
	}
}
