package padwright.engine.evidence;

import java.util.List;

import padwright.engine.film.PartialShim;
import padwright.engine.length.Length;

/**
 * The film under a pad at one time.
 *
 * @param pieces the partial shims behind it
 * @param fullShims how much thicker the full shims are than when it was first felt; may be negative
 */
public record FilmInPlace(List<PartialShim> pieces, Length fullShims) {

	/** As when it was first felt, without a piece. */
	public static final FilmInPlace NONE = new FilmInPlace(List.of(), Length.ZERO);

	public FilmInPlace {
		pieces = List.copyOf(pieces);
	}
}
