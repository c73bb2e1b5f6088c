package padwright.commands;

import java.math.BigDecimal;

import padwright.engine.quote.Money;

/** Money as it is told: exact, with two decimals at least, in the currency of the stock file. */
final class Prices {

	private Prices() {
	}

	static String text(BigDecimal amount) {
		BigDecimal exact = amount.stripTrailingZeros();
		return exact.setScale(Math.max(Money.DECIMALS, exact.scale())).toPlainString();
	}
}
