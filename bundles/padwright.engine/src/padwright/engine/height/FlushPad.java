package padwright.engine.height;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;

import padwright.engine.length.Length;

/**
 * The shortcut where the depth of the cup is not measured: pad and backing disc are taken to lie flush with the lip, so
 * the full shims sum to the mean empty-cup gap (common practice, no source).
 */
public final class FlushPad {

	private FlushPad() {
	}

	/**
	 * What the full shims must sum to: the mean of the gaps, rounded half even to the nanometre.
	 *
	 * @param emptyGaps lip to rim at the hours read, each zero or more
	 * @throws IllegalArgumentException if there are none, or one is negative
	 */
	public static Length fullShims(List<Length> emptyGaps) {
		if (emptyGaps.isEmpty()) {
			throw new IllegalArgumentException("no empty-cup gap was read");
		}
		Length sum = Length.ZERO;
		for (Length gap : emptyGaps) {
			if (gap.signum() < 0) {
				throw new IllegalArgumentException("an empty-cup gap of " + gap + " is less than nothing");
			}
			sum = sum.plus(gap);
		}
		return new Length(BigDecimal.valueOf(sum.nanometres())
				.divide(BigDecimal.valueOf(emptyGaps.size()), 0, RoundingMode.HALF_EVEN).longValueExact());
	}
}
