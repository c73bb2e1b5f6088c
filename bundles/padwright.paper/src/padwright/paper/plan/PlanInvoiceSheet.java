package padwright.paper.plan;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import padwright.engine.quote.Money;
import padwright.model.plan.Agreement;
import padwright.model.plan.Deposit;
import padwright.model.plan.EstimateOption;
import padwright.model.plan.Invoice;
import padwright.model.stock.PaperName;
import padwright.paper.money.MoneySheet.Section;
import padwright.paper.money.MoneySheet.Total;
import padwright.paper.money.MoneySheet;
import padwright.paper.words.Messages;
import padwright.workup.job.JobRecord;
import padwright.workup.job.Letterheads;
import padwright.workup.job.OpenWork;
import padwright.workup.money.MoneyDifference;
import padwright.workup.money.PlanMoney;
import padwright.workup.money.Sum;
import padwright.workup.report.Figures;
import padwright.workup.service.ServicePlan;
import padwright.workup.words.Phrase;

/** The last invoice of a plan for the player, against what was agreed. */
public final class PlanInvoiceSheet {

	private final ServicePlan plan;
	private final PlanMoney money;
	private final JobRecord record;
	private final Invoice invoice;

	private PlanInvoiceSheet(ServicePlan plan, Invoice invoice) {
		this.plan = plan;
		this.money = new PlanMoney(plan);
		this.record = JobRecord.of(plan.plan());
		this.invoice = invoice;
	}

	/**
	 * The invoice.
	 *
	 * @throws IllegalArgumentException if the plan has none
	 * @throws UndoneWorkException if the plan begins work that it does not say is done
	 */
	public static MoneySheet of(ServicePlan plan) {
		Invoice invoice = new PlanMoney(plan).invoice().orElseThrow(
				() -> new IllegalArgumentException(Messages.of("invoice.none")));
		List<Phrase> open = OpenWork.of(plan);
		if (!open.isEmpty()) {
			throw new UndoneWorkException(open);
		}
		return new PlanInvoiceSheet(plan, invoice).sheet();
	}

	private MoneySheet sheet() {
		String title = Messages.of("invoice.title", invoice.getNumber());
		return new MoneySheet(PlanHead.letter(title, plan, Optional.ofNullable(invoice.getDate())),
				PlanHead.title(title, plan), MoneyBlocks.currency(money), List.of(),
				List.of(MoneyBlocks.of("", invoice.getItems(), money, paidBefore())),
				List.of(new Section(Messages.of("invoice.against"), against()),
						new Section("", Letterheads.words(plan, PaperName.INVOICE))));
	}

	private List<Total> paidBefore() {
		List<Total> totals = new ArrayList<>();
		for (Deposit deposit : record.all(Deposit.class)) {
			if (deposit.getAmount() != null) {
				totals.add(new Total(Optional.ofNullable(deposit.getDate()).map(day -> Messages.of("invoice.paidBeforeOn", day))
						.orElseGet(() -> Messages.of("invoice.paidBefore")), Money.rounded(deposit.getAmount()).negate(), false));
			}
		}
		if (!totals.isEmpty()) {
			BigDecimal balance = money.balance(Sum.of(invoice.getItems()));
			totals.add(balance.signum() < 0 ? new Total(Messages.of("invoice.toPayBack"), balance.negate(), true)
					: new Total(Messages.of("invoice.toPay"), balance, true));
		}
		return totals;
	}

	private List<String> against() {
		Optional<EstimateOption> agreed = money.agreed();
		if (agreed.isEmpty()) {
			return List.of(Messages.of("invoice.noEstimate"));
		}
		String name = PlanEstimateSheet.name(agreed.get());
		BigDecimal before = Sum.of(agreed.get().getItems());
		BigDecimal more = Sum.of(invoice.getItems()).subtract(before);
		List<String> words = new ArrayList<>();
		String amount = beforeTax(before);
		words.add(record.last(Agreement.class).map(Agreement::getDate)
				.map(day -> Messages.of("invoice.agreedOn", day, name, amount))
				.orElseGet(() -> Messages.of("invoice.agreed", name, amount)));
		if (money.differences().isEmpty()) {
			words.add(Messages.of("invoice.asAgreed"));
			return words;
		}
		money.differences().forEach(line -> words.add(difference(line)));
		words.add(more.signum() == 0 ? Messages.of("invoice.asMuch")
				: Messages.of((more.signum() > 0 ? "invoice.more" : "invoice.less")
						+ (money.taxPercent().signum() == 0 ? "" : ".beforeTax"), Figures.money(more.abs())));
		return words;
	}

	private static String difference(MoneyDifference line) {
		if (line.agreed().signum() == 0) {
			return Messages.of("invoice.added", line.text(), Figures.money(line.invoiced()));
		}
		if (line.invoiced().signum() == 0) {
			return Messages.of("invoice.leftOut", line.text(), Figures.money(line.agreed()));
		}
		return Messages.of("invoice.instead", line.text(), Figures.money(line.invoiced()), Figures.money(line.agreed()));
	}

	private String beforeTax(BigDecimal amount) {
		String text = Figures.money(amount);
		return money.taxPercent().signum() == 0 ? text : Messages.of("invoice.beforeTax", text);
	}
}
