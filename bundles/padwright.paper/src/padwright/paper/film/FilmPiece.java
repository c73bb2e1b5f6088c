package padwright.paper.film;

import padwright.engine.film.PartialShim;
import padwright.engine.length.Length;
import padwright.paper.words.Messages;

/**
 * A partial shim to cut.
 *
 * @param key label of its key
 * @param shim thickness and arc
 * @param diameter of the pad it lies behind, which is that of its outer edge
 * @param assumed whether the diameter is not that of a pad of the stock
 */
public record FilmPiece(String key, PartialShim shim, Length diameter, boolean assumed) {

	/** As in {@code F♯ 7 to 11}. */
	String label() {
		return Messages.of("film.piece", key, shim.arc().from(), shim.arc().to()) + (assumed ? " *" : "");
	}
}
