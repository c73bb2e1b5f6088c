package padwright.engine.quote;

import java.math.BigDecimal;

/**
 * Some of one article.
 *
 * @param article what it is called
 * @param count 1 or more
 * @param price of one, 0 or more, exact
 */
public record QuoteLine(String article, int count, BigDecimal price) {

	/** @throws IllegalArgumentException if the count is not positive or the price negative */
	public QuoteLine {
		if (count < 1) {
			throw new IllegalArgumentException(count + " of " + article + " cannot be quoted");
		}
		Money.requireNotNegative(price, "a price");
	}

	/** Count times price, rounded to hundredths. */
	public BigDecimal amount() {
		return Money.rounded(price.multiply(BigDecimal.valueOf(count)));
	}
}
