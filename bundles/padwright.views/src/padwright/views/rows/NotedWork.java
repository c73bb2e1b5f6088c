package padwright.views.rows;

import java.util.ArrayList;
import java.util.List;

import padwright.engine.length.Length;
import padwright.model.plan.Round;
import padwright.views.Messages;
import padwright.views.WorkWords;
import padwright.workup.solve.FullShims;
import padwright.workup.solve.PlacedPieces;
import padwright.workup.words.PieceWords;

/** What a plan notes as done after the readings of a round, in the words of the trade. */
public final class NotedWork {

	private NotedWork() {
	}

	/** Empty where nothing is noted; says so where nothing was to be done. */
	public static String of(Round round) {
		List<String> done = new ArrayList<>();
		Length full = FullShims.change(round);
		if (full.signum() != 0) {
			done.add(WorkWords.full(full));
		}
		PlacedPieces.takenOut(round).forEach(piece -> done.add(WorkWords.out(piece)));
		PlacedPieces.of(round).forEach(piece -> done.add(PieceWords.of(piece)));
		return done.isEmpty() && PlacedPieces.isAnswered(round) ? Messages.of("clock.nothing") : String.join(", ", done);
	}
}
