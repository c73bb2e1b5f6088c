package padwright.views.regulate;

import java.util.stream.Collectors;

import padwright.engine.coupling.Adjustment;
import padwright.engine.coupling.FilmChange;
import padwright.engine.coupling.ScrewTurn;
import padwright.views.Figures;
import padwright.views.Messages;
import padwright.workup.words.Texts;

/** What to do at an adjuster, in the language of the user; turns by degrees and by the hours of a clock. */
final class AdjustmentWords {

	private static final int FULL_TURN = 360;

	private AdjustmentWords() {
	}

	static String of(Adjustment adjustment) {
		if (adjustment instanceof ScrewTurn turn) {
			return of(turn);
		}
		return adjustment instanceof FilmChange change ? of(change) : adjustment.inWords();
	}

	private static String of(ScrewTurn turn) {
		if (turn.travel().signum() == 0) {
			return Messages.of("regulate.leave");
		}
		return Messages.of(turn.travel().signum() > 0 ? "regulate.in" : "regulate.out",
				turn.degrees() < FULL_TURN ? degrees(turn) : turns(turn));
	}

	private static String degrees(ScrewTurn turn) {
		return turn.degrees() == 0 ? "< 1°"
				: Messages.of("regulate.degrees", turn.degrees(), Texts.decimal(turn.clockHours().stripTrailingZeros().toPlainString()));
	}

	private static String turns(ScrewTurn turn) {
		return Messages.of("regulate.turns", turn.degrees() / FULL_TURN, turn.degrees() % FULL_TURN);
	}

	private static String of(FilmChange change) {
		if (change.travel().signum() == 0) {
			return Messages.of("regulate.leave");
		}
		if (change.pieces().isEmpty()) {
			return Messages.of("regulate.noFilm");
		}
		String films = change.pieces().stream().map(Figures::shown).collect(Collectors.joining(" + ")) + " "
				+ Figures.unit();
		return Messages.of(change.travel().signum() > 0 ? "regulate.add" : "regulate.take", films);
	}
}
