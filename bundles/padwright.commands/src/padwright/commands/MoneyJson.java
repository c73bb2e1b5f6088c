package padwright.commands;

import java.math.BigDecimal;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import padwright.engine.quote.Money;
import padwright.model.plan.EstimateOption;
import padwright.model.plan.Invoice;
import padwright.model.plan.MoneyItem;
import padwright.workup.money.InvoiceNumbers;
import padwright.workup.money.MoneyDifference;
import padwright.workup.money.PlanMoney;
import padwright.workup.money.Sum;
import padwright.workup.service.ServicePlan;

/** Estimates and invoices for programs; amounts are exact decimals in text. */
final class MoneyJson {

	private MoneyJson() {
	}

	static boolean isGapless(Collection<ServicePlan> plans) {
		InvoiceNumbers numbers = InvoiceNumbers.of(plans);
		return numbers.missing().isEmpty() && numbers.twice().isEmpty();
	}

	static Map<String, Object> of(PlanMoney money) {
		Map<String, Object> json = new LinkedHashMap<>();
		json.put("plan", money.plan().plan().getName());
		json.put("options", money.options().stream().map(option -> option(option, money)).toList());
		money.agreed().ifPresent(option -> json.put("agreed", option.getName()));
		money.invoice().ifPresent(invoice -> json.put("invoice", invoice(invoice, money)));
		json.put("differences", money.differences().stream().map(MoneyJson::difference).toList());
		return json;
	}

	static Map<String, Object> of(Collection<ServicePlan> plans) {
		InvoiceNumbers numbers = InvoiceNumbers.of(plans);
		Map<String, Object> json = new LinkedHashMap<>();
		json.put("invoices", numbers.plans().values().stream().flatMap(List::stream).distinct().map(PlanMoney::new)
				.flatMap(money -> money.invoices().stream().map(invoice -> invoice(invoice, money))).toList());
		json.put("missing", numbers.missing());
		json.put("twice", numbers.twice());
		json.put("next", numbers.next());
		return json;
	}

	private static Map<String, Object> option(EstimateOption option, PlanMoney money) {
		Map<String, Object> json = new LinkedHashMap<>();
		json.put("option", option.getName());
		if (option.getLabel() != null) {
			json.put("label", option.getLabel());
		}
		addSums(option.getItems(), money, json);
		return json;
	}

	private static Map<String, Object> invoice(Invoice invoice, PlanMoney money) {
		Map<String, Object> json = new LinkedHashMap<>();
		json.put("number", invoice.getNumber());
		json.put("plan", money.plan().plan().getName());
		if (invoice.getDate() != null) {
			json.put("on", invoice.getDate().toString());
		}
		addSums(invoice.getItems(), money, json);
		json.put("paidBefore", Money.text(money.deposits()));
		json.put("balance", Money.text(money.balance(Sum.of(invoice.getItems()))));
		return json;
	}

	private static void addSums(List<MoneyItem> items, PlanMoney money, Map<String, Object> json) {
		BigDecimal net = Sum.of(items);
		BigDecimal tax = Sum.tax(net, money.taxPercent());
		json.put("net", Money.text(net));
		json.put("tax", Money.text(tax));
		json.put("total", Money.text(net.add(tax)));
	}

	private static Map<String, Object> difference(MoneyDifference line) {
		Map<String, Object> json = new LinkedHashMap<>();
		json.put("item", line.text());
		json.put("agreed", Money.text(line.agreed()));
		json.put("invoiced", Money.text(line.invoiced()));
		return json;
	}
}
