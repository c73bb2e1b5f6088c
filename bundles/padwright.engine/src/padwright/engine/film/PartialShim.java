package padwright.engine.film;

import java.util.Comparator;

import padwright.engine.clock.Arc;
import padwright.engine.length.Length;
import padwright.engine.length.LengthUnit;

/**
 * A piece of shim film cut over an arc of the clock and placed behind the pad.
 *
 * @param arc where it lies
 * @param thickness more than zero
 */
public record PartialShim(Arc arc, Length thickness) {

	/** By hour of the start from 12, 1, 2 …, then length, then thickness. */
	public static final Comparator<PartialShim> BY_CLOCK = Comparator.comparing((PartialShim piece) -> piece.arc.from())
			.thenComparing(piece -> piece.arc.halfHours()).thenComparing(PartialShim::thickness);

	/** @throws IllegalArgumentException if the thickness is not positive */
	public PartialShim {
		if (thickness.signum() <= 0) {
			throw new IllegalArgumentException("a shim of " + thickness + " is not thicker than nothing");
		}
	}

	/** As in a plan: {@code 0.5 from 2 to 4}, in thou. */
	@Override
	public String toString() {
		return thickness.in(LengthUnit.THOU, 4).toPlainString() + " " + arc;
	}
}
