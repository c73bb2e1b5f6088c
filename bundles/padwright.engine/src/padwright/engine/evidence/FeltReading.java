package padwright.engine.evidence;

import java.util.Optional;

import padwright.engine.clock.ClockHour;
import padwright.engine.length.Length;
import padwright.engine.rim.FeelerSet;

/**
 * What the hand felt at one hour: evidence of a gap, not an interval.
 *
 * @param hour where
 * @param above a limit that felt narrower than the gap, zero if none
 * @param below a limit that felt wider, empty if none
 * @param drags whether a leaf dragged at all
 */
public record FeltReading(ClockHour hour, Length above, Optional<Length> below, boolean drags) {

	/** @throws IllegalArgumentException if a limit is negative or they are crossed */
	public FeltReading {
		if (above.signum() < 0 || below.filter(limit -> !limit.isLongerThan(above)).isPresent()) {
			throw new IllegalArgumentException("a gap above " + above + " is not below " + below.get());
		}
	}

	/** The finest leaf drags, nobody said how. */
	public static FeltReading drag(ClockHour hour, FeelerSet leaves) {
		return new FeltReading(hour, Length.ZERO, Optional.of(leaves.finest()), true);
	}

	/** The finest leaf drags firmly: a gap below half of it. */
	public static FeltReading firmDrag(ClockHour hour, FeelerSet leaves) {
		return new FeltReading(hour, Length.ZERO, Optional.of(leaves.halfTheFinest()), true);
	}

	/** The finest leaf drags lightly: a gap between half of it and all of it. */
	public static FeltReading lightDrag(ClockHour hour, FeelerSet leaves) {
		return new FeltReading(hour, leaves.halfTheFinest(), Optional.of(leaves.finest()), true);
	}

	/**
	 * A leaf slides free and the next thicker one, if there is one, drags.
	 *
	 * @throws IllegalArgumentException if the leaf is not of this set
	 */
	public static FeltReading slide(ClockHour hour, Length leaf, FeelerSet leaves) {
		return new FeltReading(hour, leaf, leaves.nextThicker(leaf), false);
	}
}
