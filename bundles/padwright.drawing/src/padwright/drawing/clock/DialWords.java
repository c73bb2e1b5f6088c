package padwright.drawing.clock;

import padwright.engine.clock.ClockHour;

/**
 * The words above and below a dial. Every drawing says how its clock is to be read.
 *
 * @param above what 12 o'clock looks at, and the hour at the top if it is another
 * @param below from which side the pad is seen
 */
public record DialWords(String above, String below) {

	/** In English, with 12 at the top. */
	public static DialWords of(String twelveLooksAt) {
		return new DialWords(ClockHour.ofHour(12) + " = " + twelveLooksAt, "seen from pad side");
	}
}
