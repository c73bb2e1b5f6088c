package padwright.language.ide.facts;

import padwright.engine.length.Length;
import padwright.engine.length.LengthUnit;

/** Lengths as they are shown to people: rounded, where the exact figure would only distract. */
public final class Figures {

	private static final int SHOWN_DECIMALS = 2;

	private Figures() {
	}

	/** To a hundredth of a thou, without the unit. */
	public static String number(Length length) {
		return length.in(LengthUnit.THOU, SHOWN_DECIMALS).toPlainString();
	}

	/** To a hundredth of a thou, as in {@code 1.25 thou}. */
	public static String thou(Length length) {
		return number(length) + " thou";
	}

	/** To a hundredth of a millimetre, as in {@code 17.5 mm}. */
	public static String millimetres(Length length) {
		return length.in(LengthUnit.MILLIMETRE, SHOWN_DECIMALS).toPlainString() + " mm";
	}
}
