package padwright.paper.plan;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;

import padwright.model.plan.MoneyItem;
import padwright.model.stock.Letterhead;
import padwright.paper.money.MoneySheet.Block;
import padwright.paper.money.MoneySheet.Line;
import padwright.paper.money.MoneySheet.Total;
import padwright.paper.words.Messages;
import padwright.workup.job.Letterheads;
import padwright.workup.money.PlanMoney;
import padwright.workup.money.Sum;
import padwright.workup.report.Figures;

/** What estimates and invoices of a plan have in common. */
final class MoneyBlocks {

	private MoneyBlocks() {
	}

	/** Lines with their sums; {@code more} sums stand last, the very last one is to be paid. */
	static Block of(String heading, List<MoneyItem> items, PlanMoney money, List<Total> more) {
		BigDecimal net = Sum.of(items);
		BigDecimal tax = Sum.tax(net, money.taxPercent());
		List<Total> totals = new ArrayList<>();
		if (tax.signum() != 0) {
			totals.add(new Total(Messages.of("money.net"), net, false));
			totals.add(new Total(Messages.of("money.tax", Figures.plain(money.taxPercent().stripTrailingZeros())), tax, false));
		}
		totals.add(new Total(Messages.of("money.total"), net.add(tax), more.isEmpty()));
		totals.addAll(more);
		return new Block(heading, items.stream().filter(item -> item.getText() != null).map(MoneyBlocks::line).toList(), totals);
	}

	private static Line line(MoneyItem item) {
		BigDecimal count = item.getCount() == null ? BigDecimal.ONE : item.getCount();
		BigDecimal price = item.getPrice() == null ? BigDecimal.ZERO : item.getPrice();
		return new Line(item.getText(), Figures.plain(count), price, Sum.of(item));
	}

	/** As the shop's letterhead says, or empty. */
	static String currency(PlanMoney money) {
		return Letterheads.of(money.plan()).map(Letterhead::getCurrency).orElse("");
	}
}
