package padwright.views.regulate;

import java.util.stream.Collectors;

import padwright.engine.coupling.Adjustment;
import padwright.engine.coupling.FilmChange;
import padwright.engine.coupling.ScrewTurn;
import padwright.views.Figures;
import padwright.views.Messages;

/** What to do at an adjuster, in the language of the user; turns to the nearest eighth. */
final class AdjustmentWords {

	private static final String[] EIGHTHS = { "", "⅛", "¼", "⅜", "½", "⅝", "¾", "⅞" };

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
				amount(Math.abs(turn.eighths())));
	}

	private static String amount(long eighths) {
		if (eighths == 0) {
			return "< " + EIGHTHS[1];
		}
		return (eighths >= 8 ? String.valueOf(eighths / 8) : "") + EIGHTHS[(int) (eighths % 8)];
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
