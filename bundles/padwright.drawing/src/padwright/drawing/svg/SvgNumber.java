package padwright.drawing.svg;

import java.util.Locale;

/** Numbers as short decimals of at most three places, the same on every machine. */
final class SvgNumber {

	private static final int THOUSAND = 1000;

	private SvgNumber() {
	}

	/** {@code 1.25}, {@code -0.5}, {@code 3}; never {@code -0}, an exponent or a comma. */
	static String of(double number) {
		long thousandths = Math.round(number * THOUSAND);
		long magnitude = Math.abs(thousandths);
		String whole = (thousandths < 0 ? "-" : "") + magnitude / THOUSAND;
		long rest = magnitude % THOUSAND;
		return rest == 0 ? whole : whole + String.format(Locale.ROOT, ".%03d", rest).replaceFirst("0+$", "");
	}
}
