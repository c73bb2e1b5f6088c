package padwright.engine.quote;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Money in exact decimals. The currency is that of the prices; no currency is converted. */
public final class Money {

	/** Hundredths: what amounts are rounded to. */
	public static final int DECIMALS = 2;

	private Money() {
	}

	/** Rounded to hundredths, halves away from zero. */
	public static BigDecimal rounded(BigDecimal amount) {
		return amount.setScale(DECIMALS, RoundingMode.HALF_UP);
	}

	/** As it is told: exact, with two decimals at least. */
	public static String text(BigDecimal amount) {
		BigDecimal exact = amount.stripTrailingZeros();
		return exact.setScale(Math.max(DECIMALS, exact.scale())).toPlainString();
	}

	/** @throws IllegalArgumentException if the number is negative; {@code what} names it */
	static void requireNotNegative(BigDecimal number, String what) {
		if (number.signum() < 0) {
			throw new IllegalArgumentException(what + " of " + number.toPlainString() + " is below nothing");
		}
	}
}
