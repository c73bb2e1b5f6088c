package padwright.workup.report;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

import padwright.engine.length.Length;
import padwright.engine.length.LengthUnit;
import padwright.workup.words.Amount;
import padwright.workup.words.Texts;

/** Amounts as reports show them, with the decimal sign of the language in which the program speaks. */
public final class Figures {

	private Figures() {
	}

	/** In millimetres to {@code decimals} places, without the unit. */
	public static String millimetres(Length length, int decimals) {
		return plain(length.in(LengthUnit.MILLIMETRE, decimals));
	}

	/** To {@code decimals} places. */
	public static String number(double number, int decimals) {
		return Texts.decimal(String.format(Locale.ROOT, "%." + decimals + "f", number));
	}

	/** To {@code decimals} places or fewer, with a sign unless that is nothing. */
	public static String signed(BigDecimal number, int decimals) {
		BigDecimal rounded = number.setScale(decimals, RoundingMode.HALF_EVEN).stripTrailingZeros();
		return (rounded.signum() > 0 ? "+" : "") + plain(rounded).replace('-', '\u2212');
	}

	/** A share of one in whole percent. */
	public static String percent(double share) {
		return number(100 * share, 0) + " %";
	}

	/**
	 * Parts of a whole in whole percent that sum to a hundred: those that lose most by being cut are rounded up.
	 *
	 * @param parts 0 or more each, not all of them 0
	 */
	public static List<String> percents(List<Double> parts) {
		double whole = parts.stream().mapToDouble(Double::doubleValue).sum();
		double[] exact = parts.stream().mapToDouble(part -> 100 * part / whole).toArray();
		int left = 100 - Arrays.stream(exact).mapToInt(percent -> (int) percent).sum();
		Set<Integer> up = IntStream.range(0, exact.length).boxed()
				.sorted(Comparator.comparingDouble(index -> (int) exact[index] - exact[index])).limit(left)
				.collect(Collectors.toSet());
		return IntStream.range(0, exact.length)
				.mapToObj(index -> (int) exact[index] + (up.contains(index) ? 1 : 0) + " %").toList();
	}

	/** Money, to hundredths at least. */
	public static String money(BigDecimal amount) {
		return new Amount(amount).toString();
	}

	/** All its decimals. */
	public static String plain(BigDecimal number) {
		return Texts.decimal(number.toPlainString());
	}
}
