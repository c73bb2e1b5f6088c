package padwright.engine.height;

import padwright.engine.length.Length;

/**
 * What fills a cup whose key is at its closing height: floor of the cup to rim = cup depth + empty-cup gap =
 * backing disc + full shims + pad − seat. All zero or more; the cup and the pad more than zero.
 *
 * @param cupDepth floor of the cup to its lip
 * @param emptyGap lip to rim with no pad in the cup, the mean around the clock
 * @param seat how far the rim sinks into the pad's face
 * @param backing thickness of the backing disc, zero if there is none
 * @param pad thickness of the pad
 */
public record HeightEquation(Length cupDepth, Length emptyGap, Length seat, Length backing, Length pad) {

	/** @throws IllegalArgumentException if the cup or pad is not more than zero, or another part is negative */
	public HeightEquation {
		requirePositive("cup depth", cupDepth);
		requirePositive("pad", pad);
		requireNotNegative("empty gap", emptyGap);
		requireNotNegative("seat", seat);
		requireNotNegative("backing", backing);
	}

	/** What the full shims must sum to, exact; negative if pad and backing disc are already too high. */
	public Length fullShims() {
		return cupDepth.plus(emptyGap).plus(seat).minus(backing).minus(pad);
	}

	private static void requirePositive(String part, Length length) {
		if (length.signum() <= 0) {
			throw new IllegalArgumentException("a " + part + " of " + length + " is not more than nothing");
		}
	}

	private static void requireNotNegative(String part, Length length) {
		if (length.signum() < 0) {
			throw new IllegalArgumentException("a " + part + " of " + length + " is less than nothing");
		}
	}
}
