package padwright.engine.rim;

import java.util.Optional;

import padwright.engine.clock.ClockHour;
import padwright.engine.length.Length;

/**
 * What one reading says about the gap at one hour: an interval, not a point, unless the gap was measured.
 *
 * @param hour where it was read
 * @param atLeast the gap is not less than this, 0 to 10 mm
 * @param atMost the gap is not more than this, {@code atLeast} to 10 mm; empty if no bound is known
 */
public record RimReading(ClockHour hour, Length atLeast, Optional<Length> atMost) {

	private static final Length WIDEST = Length.millimetres("10");

	/** @throws IllegalArgumentException if a bound is negative or beyond 10 mm, or the bounds are crossed */
	public RimReading {
		requireGap(hour, atLeast);
		atMost.ifPresent(bound -> requireGap(hour, bound));
		if (atMost.isPresent() && atMost.get().isShorterThan(atLeast)) {
			throw new IllegalArgumentException(
					"at " + hour + " a gap of at least " + atLeast + " cannot be at most " + atMost.get());
		}
	}

	/** A measured gap, as in an empty cup. */
	public static RimReading point(ClockHour hour, Length gap) {
		return new RimReading(hour, gap, Optional.of(gap));
	}

	/** How far a gap is outside this reading, zero inside. */
	public Length distanceFrom(Length gap) {
		if (gap.isShorterThan(atLeast)) {
			return atLeast.minus(gap);
		}
		return atMost.filter(gap::isLongerThan).map(gap::minus).orElse(Length.ZERO);
	}

	private static void requireGap(ClockHour hour, Length gap) {
		if (gap.signum() < 0 || gap.isLongerThan(WIDEST)) {
			throw new IllegalArgumentException("at " + hour + " a gap of " + gap + " is not from nothing to 10 mm");
		}
	}
}
