package padwright.workup.money;

import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

import padwright.model.plan.MoneyItem;

/**
 * A line by which an invoice differs from what was agreed. Lines are known again by their words.
 *
 * @param agreed amount, zero for a line that was not agreed
 * @param invoiced amount, zero for a line that was left out
 */
public record MoneyDifference(String text, BigDecimal agreed, BigDecimal invoiced) {

	static List<MoneyDifference> between(List<MoneyItem> agreed, List<MoneyItem> invoiced) {
		Map<String, BigDecimal> before = byText(agreed);
		Map<String, BigDecimal> after = byText(invoiced);
		Map<String, MoneyDifference> all = new LinkedHashMap<>();
		before.forEach((text, amount) -> all.put(text,
				new MoneyDifference(text, amount, after.getOrDefault(text, BigDecimal.ZERO))));
		after.forEach((text, amount) -> all.putIfAbsent(text, new MoneyDifference(text, BigDecimal.ZERO, amount)));
		return all.values().stream().filter(line -> line.more().signum() != 0).toList();
	}

	private static Map<String, BigDecimal> byText(List<MoneyItem> items) {
		return items.stream().filter(item -> item.getText() != null).collect(Collectors.toMap(
				item -> item.getText().strip(), Sum::of, BigDecimal::add, LinkedHashMap::new));
	}

	/** Invoiced less agreed. */
	public BigDecimal more() {
		return invoiced.subtract(agreed);
	}
}
