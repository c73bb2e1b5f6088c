package padwright.workup.words;

import java.math.BigDecimal;

import padwright.engine.quote.Money;

/** Money among the values of a {@link Phrase}. */
public record Amount(BigDecimal money) {

	/** To hundredths at least, with the decimal sign of the language of now. */
	@Override
	public String toString() {
		return Texts.decimal(Money.text(money));
	}
}
