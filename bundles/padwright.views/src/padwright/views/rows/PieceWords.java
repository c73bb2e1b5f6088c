package padwright.views.rows;

import padwright.engine.film.PartialShim;
import padwright.engine.length.Length;
import padwright.views.Figures;
import padwright.views.Messages;

/** What is laid into a cup or taken out of it, with its figures as they are shown. */
public final class PieceWords {

	private PieceWords() {
	}

	/** As in {@code 0.5 from 2 to 4}. */
	public static String of(PartialShim piece) {
		return Messages.of("work.piece", Figures.shown(piece.thickness()), piece.arc().from(), piece.arc().to());
	}

	/** An earlier piece that comes out. */
	public static String out(PartialShim piece) {
		return Messages.of("work.out", of(piece));
	}

	/** By how much the full shims are changed. */
	public static String full(Length change) {
		return Messages.of("work.full", (change.signum() > 0 ? "+" : "\u2212") + Figures.shown(change.abs()));
	}
}
