package padwright.views;

import padwright.engine.film.PartialShim;
import padwright.engine.length.Length;
import padwright.workup.words.PieceWords;

/** What is laid into a cup or taken out of it, with its figures as they are shown. */
public final class WorkWords {

	private WorkWords() {
	}

	/** An earlier piece that comes out. */
	public static String out(PartialShim piece) {
		return Messages.of("work.out", PieceWords.of(piece));
	}

	/** By how much the full shims are changed. */
	public static String full(Length change) {
		return Messages.of("work.full", (change.signum() > 0 ? "+" : "\u2212") + Figures.shown(change.abs()));
	}
}
