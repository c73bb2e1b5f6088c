package padwright.views;

import padwright.engine.clock.ClockHour;
import padwright.engine.length.LengthUnit;
import padwright.workup.words.ShownUnit;

/**
 * How the user wants lengths and clocks shown, and readings typed. As with a language, there is one choice for the whole
 * program.
 */
public final class Shown {

	private static volatile ClockHour top = ClockHour.ofHour(12);
	private static volatile boolean typedInFull;

	private Shown() {
	}

	/** The unit of shims and gaps. Diameters are in mm in any case. */
	public static LengthUnit unit() {
		return ShownUnit.now();
	}

	/** Whatever is drawn or typed from now on is in this unit. */
	public static void setUnit(LengthUnit wanted) {
		ShownUnit.choose(wanted);
	}

	/** The hour that clocks are drawn with at the top. */
	public static ClockHour top() {
		return top;
	}

	/** Whatever is drawn from now on has this hour at the top. */
	public static void setTop(ClockHour wanted) {
		top = wanted;
	}

	/** Whether every reading is typed as a figure that Enter ends, as an indicator types; else one stroke is a reading. */
	public static boolean isTypedInFull() {
		return typedInFull;
	}

	/** How readings are typed from now on. */
	public static void setTypedInFull(boolean wanted) {
		typedInFull = wanted;
	}
}
