package padwright.model;

import java.math.BigDecimal;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import padwright.engine.length.Length;
import padwright.engine.length.LengthUnit;

/**
 * A length as it was written: a number and, where one stood behind it, a unit. Without a unit it takes the unit of
 * its document.
 *
 * @param number the number as written, trailing zeros kept
 * @param unit the unit, or null where none was written
 */
public record Measure(BigDecimal number, LengthUnit unit) {

	private static final Pattern FORM = Pattern.compile("([0-9]+(?:\\.[0-9]+)?)\\s*([a-z]+)?");

	/**
	 * The measure written as {@code text}, such as {@code 14.3 mm} or {@code 0.5}.
	 *
	 * @throws IllegalArgumentException if it is not a number with a unit of length or without one
	 */
	public static Measure valueOf(String text) {
		Matcher form = FORM.matcher(text.strip());
		if (!form.matches()) {
			throw new IllegalArgumentException("\"" + text + "\" is not a length such as 14.3 mm or 0.5 thou");
		}
		return new Measure(new BigDecimal(form.group(1)), unit(form.group(2)));
	}

	private static LengthUnit unit(String symbol) {
		return symbol == null ? null
				: LengthUnit.bySymbol(symbol).orElseThrow(() -> new IllegalArgumentException(
						"\"" + symbol + "\" is not a unit of length: " + String.join(", ", LengthUnit.symbols())));
	}

	/**
	 * The exact length, taking {@code defaultUnit} where none was written.
	 *
	 * @throws ArithmeticException if it is finer than a nanometre or out of range
	 */
	public Length length(LengthUnit defaultUnit) {
		return Length.of(number, unit == null ? defaultUnit : unit);
	}

	@Override
	public String toString() {
		return number.toPlainString() + (unit == null ? "" : " " + unit.symbol());
	}
}
