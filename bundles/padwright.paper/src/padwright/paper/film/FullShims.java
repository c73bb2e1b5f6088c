package padwright.paper.film;

import java.util.Optional;

import padwright.engine.length.Length;
import padwright.engine.length.LengthUnit;

/**
 * Full shims of one diameter.
 *
 * @param diameter of the pad; empty if it is not known
 * @param count 1 or more
 */
public record FullShims(Optional<Length> diameter, int count) {

	/** As in {@code 4 × 17.5 mm}. */
	String label() {
		return count + " × " + diameter.map(width -> width.in(LengthUnit.MILLIMETRE, 2).toPlainString() + " mm")
				.orElse("of a diameter not known");
	}
}
