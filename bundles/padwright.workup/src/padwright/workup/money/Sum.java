package padwright.workup.money;

import java.math.BigDecimal;
import java.util.List;

import padwright.engine.quote.Money;
import padwright.model.plan.MoneyItem;

/** Sums of lines of money, each rounded to hundredths before it is added, so that what is printed adds up. */
public final class Sum {

	private Sum() {
	}

	/** Price times count, one where none is said; nothing where there is no price yet. */
	public static BigDecimal of(MoneyItem item) {
		if (item.getPrice() == null) {
			return Money.rounded(BigDecimal.ZERO);
		}
		return Money.rounded(item.getPrice().multiply(item.getCount() == null ? BigDecimal.ONE : item.getCount()));
	}

	public static BigDecimal of(List<MoneyItem> items) {
		return items.stream().map(Sum::of).reduce(Money.rounded(BigDecimal.ZERO), BigDecimal::add);
	}

	/** Per cent of a sum, rounded once, halves up. */
	public static BigDecimal tax(BigDecimal net, BigDecimal perCent) {
		return Money.rounded(net.multiply(perCent).movePointLeft(2));
	}
}
