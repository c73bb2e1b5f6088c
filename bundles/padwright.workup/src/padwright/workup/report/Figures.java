package padwright.workup.report;

import java.math.BigDecimal;
import java.util.Locale;

import padwright.engine.length.Length;
import padwright.engine.length.LengthUnit;
import padwright.engine.quote.Money;
import padwright.workup.words.Texts;

/** Amounts as reports show them, with the decimal sign of the language in which the program speaks. */
public final class Figures {

	private Figures() {
	}

	/** In thou to two decimals, without the unit. */
	public static String thou(Length length) {
		return plain(length.in(LengthUnit.THOU, 2));
	}

	/** In thou to {@code decimals} places, without the unit, with a plus before what is above zero then. */
	public static String signedThou(Length length, int decimals) {
		BigDecimal thou = length.in(LengthUnit.THOU, decimals);
		return (thou.signum() > 0 ? "+" : "") + plain(thou);
	}

	/** In millimetres to {@code decimals} places, without the unit. */
	public static String millimetres(Length length, int decimals) {
		return plain(length.in(LengthUnit.MILLIMETRE, decimals));
	}

	/** To {@code decimals} places. */
	public static String number(double number, int decimals) {
		return Texts.decimal(String.format(Locale.ROOT, "%." + decimals + "f", number));
	}

	/** A share of one in whole percent. */
	public static String percent(double share) {
		return number(100 * share, 0) + " %";
	}

	/** Money, to hundredths at least. */
	public static String money(BigDecimal amount) {
		return Texts.decimal(Money.text(amount));
	}

	/** All its decimals. */
	public static String plain(BigDecimal number) {
		return Texts.decimal(number.toPlainString());
	}
}
