package padwright.workup.report;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.stream.Collectors;

import padwright.model.plan.EstimateOption;
import padwright.model.plan.Invoice;
import padwright.model.plan.MoneyItem;
import padwright.workup.money.InvoiceNumbers;
import padwright.workup.money.PlanMoney;
import padwright.workup.money.Sum;
import padwright.workup.service.ServicePlan;
import padwright.workup.words.Days;
import padwright.workup.words.Messages;

/** Estimates and invoices of one plan, or the invoices of a shop by number. */
public final class MoneyReport {

	private MoneyReport() {
	}

	/** Of one plan: its options, its invoice, and by what that differs from what was agreed. */
	public static Report of(PlanMoney money) {
		List<ReportTable> tables = new ArrayList<>();
		money.options().forEach(option -> tables.add(option(option, money)));
		money.invoice().ifPresent(invoice -> tables.add(invoice(invoice, money)));
		if (tables.isEmpty()) {
			ReportTable.Maker nothing = new ReportTable.Maker("").words(Messages.of("report.money.item"));
			nothing.note(Messages.of("report.money.nothing"));
			tables.add(nothing.table());
		}
		return new Report(Messages.of("report.money.title", money.plan().plan().getName()), List.of(), tables);
	}

	private static ReportTable option(EstimateOption option, PlanMoney money) {
		String name = option.getLabel() == null ? option.getName() : option.getLabel();
		boolean isAgreed = money.agreed().filter(option::equals).isPresent();
		ReportTable.Maker table = lines(isAgreed ? Messages.of("report.money.agreed", name)
				: Messages.of("report.money.option", name), option.getItems());
		sums(Sum.of(option.getItems()), money, table);
		return table.table();
	}

	private static ReportTable invoice(Invoice invoice, PlanMoney money) {
		ReportTable.Maker table = lines(Messages.of("report.money.invoice", invoice.getNumber()), invoice.getItems());
		BigDecimal net = Sum.of(invoice.getItems());
		sums(net, money, table);
		if (money.deposits().signum() != 0) {
			table.row(Messages.of("report.money.deposits"), "", "", Figures.money(money.deposits().negate()));
			table.row(Messages.of("report.money.balance"), "", "", Figures.money(money.balance(net)));
		}
		money.differences().forEach(line -> table.note(Messages.of("report.money.differs", line.text(),
				Figures.money(line.invoiced()), Figures.money(line.agreed()))));
		if (money.agreed().isEmpty()) {
			table.note(Messages.of("report.money.notAgreed"));
		}
		return table.table();
	}

	private static ReportTable.Maker lines(String title, List<MoneyItem> items) {
		ReportTable.Maker table = new ReportTable.Maker(title).words(Messages.of("report.money.item"))
				.figures(Messages.of("report.count"), Messages.of("report.each"), Messages.of("report.quote.amount"));
		items.forEach(item -> table.row(item.getText(),
				Figures.plain(item.getCount() == null ? BigDecimal.ONE : item.getCount()),
				item.getPrice() == null ? "" : Figures.money(item.getPrice()), Figures.money(Sum.of(item))));
		return table;
	}

	private static void sums(BigDecimal net, PlanMoney money, ReportTable.Maker table) {
		BigDecimal tax = Sum.tax(net, money.taxPercent());
		table.row(Messages.of("report.quote.net"), "", "", Figures.money(net));
		table.row(Messages.of("report.quote.tax", Figures.plain(money.taxPercent())), "", "", Figures.money(tax));
		table.row(Messages.of("report.quote.total"), "", "", Figures.money(net.add(tax)));
	}

	/** Of a shop: every invoice by its number, and which numbers are missing or stand twice. */
	public static Report of(Collection<ServicePlan> plans) {
		InvoiceNumbers numbers = InvoiceNumbers.of(plans);
		ReportTable.Maker table = new ReportTable.Maker("").figures(Messages.of("report.money.number"))
				.words(Messages.of("report.date"), Messages.of("report.plan"))
				.figures(Messages.of("report.quote.net"), Messages.of("report.money.tax"), Messages.of("report.quote.total"));
		numbers.plans().forEach((number, carriers) -> carriers.stream().distinct()
				.forEach(plan -> rows(number, new PlanMoney(plan), table)));
		if (!numbers.missing().isEmpty()) {
			table.note(Messages.of("report.money.missing", list(numbers.missing())));
		}
		if (!numbers.twice().isEmpty()) {
			table.note(Messages.of("report.money.twice", list(numbers.twice())));
		}
		table.note(Messages.of("report.money.next", numbers.next()));
		return new Report(Messages.of("report.money.invoices"), List.of(), List.of(table.table()));
	}

	private static void rows(int number, PlanMoney money, ReportTable.Maker table) {
		money.invoices().stream().filter(invoice -> invoice.getNumber() == number).forEach(invoice -> {
			BigDecimal net = Sum.of(invoice.getItems());
			BigDecimal tax = Sum.tax(net, money.taxPercent());
			table.ofPlan(money.plan().plan().getName(), String.valueOf(number),
					invoice.getDate() == null ? "" : Days.of(invoice.getDate()), money.plan().plan().getName(),
					Figures.money(net), Figures.money(tax), Figures.money(net.add(tax)));
		});
	}

	private static String list(List<Integer> numbers) {
		return numbers.stream().map(String::valueOf).collect(Collectors.joining(", "));
	}
}
