package padwright.workup.regulate;

import java.util.stream.Collectors;

import padwright.engine.coupling.Adjustment;
import padwright.engine.coupling.FilmChange;
import padwright.engine.coupling.ScrewTurn;
import padwright.workup.words.LengthWords;
import padwright.workup.words.Messages;
import padwright.workup.words.ShownUnit;
import padwright.workup.words.Texts;

/** What to do at an adjuster, in words; turns by degrees and by the hours of a clock. */
public final class AdjustmentWords {

	private static final int FULL_TURN = 360;

	private AdjustmentWords() {
	}

	/** As in {@code 91° in (3 clock hours)} or {@code add 1.5 thou of film}. */
	public static String of(Adjustment adjustment) {
		return adjustment instanceof ScrewTurn turn ? of(turn) : of((FilmChange) adjustment);
	}

	private static String of(ScrewTurn turn) {
		if (turn.travel().signum() == 0) {
			return Messages.of("adjust.leave");
		}
		String words = Messages.of(turn.travel().signum() > 0 ? "adjust.in" : "adjust.out", amount(turn));
		String hours = Texts.decimal(turn.clockHours().stripTrailingZeros().toPlainString());
		return turn.degrees() == 0 || turn.degrees() >= FULL_TURN ? words
				: hours.equals("1") ? Messages.of("adjust.clock.one", words) : Messages.of("adjust.clock", words, hours);
	}

	private static String amount(ScrewTurn turn) {
		long whole = turn.degrees() / FULL_TURN;
		long rest = turn.degrees() % FULL_TURN;
		if (whole == 0) {
			return rest == 0 ? "< 1°" : rest + "°";
		}
		String turns = whole == 1 ? Messages.of("adjust.turns.one") : Messages.of("adjust.turns", whole);
		return rest == 0 ? turns : Messages.of("adjust.turnsAnd", turns, rest);
	}

	private static String of(FilmChange change) {
		if (change.pieces().isEmpty()) {
			return Messages.of(change.travel().signum() == 0 ? "adjust.leave" : "adjust.noFilm");
		}
		String films = change.pieces().stream().map(LengthWords::figure).collect(Collectors.joining(" + "));
		return Messages.of(change.travel().signum() < 0 ? "adjust.take" : "adjust.add", films + " " + ShownUnit.symbol());
	}
}
