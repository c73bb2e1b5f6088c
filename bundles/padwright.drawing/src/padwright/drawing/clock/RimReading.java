package padwright.drawing.clock;

import padwright.engine.clock.ClockHour;

/**
 * What the feeler said at one hour.
 *
 * @param at where
 * @param text the thickest leaf that slides free, as it is written, in thou; empty where nothing was read yet
 * @param drags the finest leaf drags: no leak to be felt; drawn as a dot, without the text
 */
public record RimReading(ClockHour at, String text, boolean drags) {

	/** The finest leaf drags. */
	public static RimReading drag(ClockHour at) {
		return new RimReading(at, "drags", true);
	}

	/** The finest leaf drags, but lightly. */
	public static RimReading lightDrag(ClockHour at) {
		return new RimReading(at, "–", false);
	}

	/** A leaf of this thickness in thou slides free. */
	public static RimReading free(ClockHour at, String thou) {
		return new RimReading(at, thou, false);
	}

	/** Still to be read: drawn as a box to write in. */
	public static RimReading blank(ClockHour at) {
		return new RimReading(at, "", false);
	}
}
