package padwright.engine.quote;

import java.math.BigDecimal;
import java.util.List;

/**
 * What a job costs. Every amount that is shown is rounded to hundredths before it is added, so that the figures on
 * paper add up; the tax is rounded once, on the net sum.
 *
 * @param lines what has a price
 * @param unpriced what is used but has no price, and so is in no sum
 * @param taxPercent 0 or more
 */
public record Quote(List<QuoteLine> lines, List<String> unpriced, Labour labour, BigDecimal taxPercent) {

	/** @throws IllegalArgumentException if the tax is negative */
	public Quote {
		lines = List.copyOf(lines);
		unpriced = List.copyOf(unpriced);
		Money.requireNotNegative(taxPercent, "a tax");
	}

	/** The lines together. */
	public BigDecimal parts() {
		return lines.stream().map(QuoteLine::amount).reduce(Money.rounded(BigDecimal.ZERO), BigDecimal::add);
	}

	/** Parts and labour. */
	public BigDecimal net() {
		return parts().add(labour.amount());
	}

	/** On the net sum. */
	public BigDecimal tax() {
		return Money.rounded(net().multiply(taxPercent).movePointLeft(2));
	}

	/** Net sum and tax. */
	public BigDecimal total() {
		return net().add(tax());
	}
}
