package padwright.workup.words;

import padwright.engine.film.PartialShim;

/** Pieces of film, as they are laid. */
public final class PieceWords {

	private PieceWords() {
	}

	/** As in {@code 0.5 from 2 to 4}, its thickness in the unit that is shown. */
	public static String of(PartialShim piece) {
		return Messages.of("piece", LengthWords.figure(piece.thickness()), piece.arc().from(),
				piece.arc().to());
	}
}
