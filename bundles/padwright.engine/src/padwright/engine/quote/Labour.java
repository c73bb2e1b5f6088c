package padwright.engine.quote;

import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * Time at the bench.
 *
 * @param minutes 0 or more
 * @param rate money for an hour, 0 or more
 */
public record Labour(BigDecimal minutes, BigDecimal rate) {

	/** No time. */
	public static final Labour NONE = new Labour(BigDecimal.ZERO, BigDecimal.ZERO);

	private static final BigDecimal MINUTES_PER_HOUR = BigDecimal.valueOf(60);

	/** @throws IllegalArgumentException if one is negative */
	public Labour {
		Money.requireNotNegative(minutes, "a time");
		Money.requireNotNegative(rate, "a rate");
	}

	/** Minutes times rate, rounded to hundredths once, halves up. */
	public BigDecimal amount() {
		return minutes.multiply(rate).divide(MINUTES_PER_HOUR, Money.DECIMALS, RoundingMode.HALF_UP);
	}
}
