package padwright.paper.film;

import java.util.Optional;

import padwright.engine.length.Length;
import padwright.paper.words.Messages;
import padwright.workup.words.LengthWords;

/**
 * Full shims of one diameter.
 *
 * @param diameter of the pad; empty if it is not known
 * @param count 1 or more
 */
public record FullShims(Optional<Length> diameter, int count) {

	/** As in {@code 4 × 17.5 mm}. */
	String label() {
		return count + " × " + diameter.map(width -> LengthWords.millimetres(width, 2) + " mm")
				.orElseGet(() -> Messages.of("film.unknownDiameter"));
	}
}
