package padwright.commands;

import java.math.BigDecimal;
import java.util.Locale;

import padwright.engine.length.Length;
import padwright.engine.length.LengthUnit;

/** Amounts as tables show them. */
final class Amounts {

	private Amounts() {
	}

	/** In thou to two decimals, without the unit. */
	static String thou(Length length) {
		return length.in(LengthUnit.THOU, 2).toPlainString();
	}

	/** The same with a plus before what is above zero. */
	static String signedThou(Length length) {
		return signedThou(length, 2);
	}

	/** In thou to {@code decimals} places, without the unit, with a plus before what is above zero then. */
	static String signedThou(Length length, int decimals) {
		BigDecimal thou = length.in(LengthUnit.THOU, decimals);
		return (thou.signum() > 0 ? "+" : "") + thou.toPlainString();
	}

	/** In millimetres to {@code decimals} places, without the unit. */
	static String millimetres(Length length, int decimals) {
		return length.in(LengthUnit.MILLIMETRE, decimals).toPlainString();
	}

	/** To {@code decimals} places. */
	static String number(double number, int decimals) {
		return String.format(Locale.ROOT, "%." + decimals + "f", number);
	}

	/** A share of one in whole percent. */
	static String percent(double share) {
		return number(100 * share, 0) + " %";
	}
}
