package padwright.paper.plan;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import padwright.engine.quote.Money;
import padwright.model.plan.Agreement;
import padwright.model.plan.Deposit;
import padwright.model.plan.EstimateOption;
import padwright.model.plan.Invoice;
import padwright.model.stock.PaperName;
import padwright.paper.money.MoneySheet;
import padwright.paper.money.MoneySheet.Section;
import padwright.paper.money.MoneySheet.Total;
import padwright.workup.job.JobRecord;
import padwright.workup.job.Letterheads;
import padwright.workup.job.OpenWork;
import padwright.workup.money.MoneyDifference;
import padwright.workup.money.PlanMoney;
import padwright.workup.money.Sum;
import padwright.workup.service.ServicePlan;

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
				() -> new IllegalArgumentException("the plan has no invoice; write invoice with its number into its job"));
		List<String> open = OpenWork.of(plan);
		if (!open.isEmpty()) {
			throw new UndoneWorkException(open);
		}
		return new PlanInvoiceSheet(plan, invoice).sheet();
	}

	private MoneySheet sheet() {
		String title = "Invoice " + invoice.getNumber();
		return new MoneySheet(PlanHead.letter(title, plan, Optional.ofNullable(invoice.getDate())),
				PlanHead.title(title, plan), MoneyBlocks.currency(money), List.of(),
				List.of(MoneyBlocks.of("", invoice.getItems(), money, paidBefore())),
				List.of(new Section("Against the estimate", against()),
						new Section("", Letterheads.words(plan, PaperName.INVOICE))));
	}

	private List<Total> paidBefore() {
		List<Total> totals = new ArrayList<>();
		for (Deposit deposit : record.all(Deposit.class)) {
			if (deposit.getAmount() != null) {
				totals.add(new Total("paid before" + on(deposit.getDate()), Money.rounded(deposit.getAmount()).negate(), false));
			}
		}
		if (!totals.isEmpty()) {
			BigDecimal balance = money.balance(Sum.of(invoice.getItems()));
			totals.add(balance.signum() < 0 ? new Total("to be paid back to you", balance.negate(), true)
					: new Total("to be paid", balance, true));
		}
		return totals;
	}

	private List<String> against() {
		Optional<EstimateOption> agreed = money.agreed();
		if (agreed.isEmpty()) {
			return List.of("No estimate was agreed on before.");
		}
		String name = PlanEstimateSheet.name(agreed.get());
		BigDecimal before = Sum.of(agreed.get().getItems());
		BigDecimal more = Sum.of(invoice.getItems()).subtract(before);
		List<String> words = new ArrayList<>();
		words.add("Agreed" + on(record.last(Agreement.class).map(Agreement::getDate).orElse(null)) + ": " + name + ", "
				+ Money.text(before) + beforeTax() + ".");
		if (money.differences().isEmpty()) {
			words.add("The invoice is as agreed.");
			return words;
		}
		money.differences().forEach(line -> words.add(difference(line)));
		words.add(more.signum() == 0 ? "Together it is as much as agreed."
				: "Together it is " + Money.text(more.abs()) + (more.signum() > 0 ? " more" : " less") + " than agreed"
						+ (beforeTax().isEmpty() ? "" : "," + beforeTax()) + ".");
		return words;
	}

	private static String difference(MoneyDifference line) {
		if (line.agreed().signum() == 0) {
			return line.text() + ": " + Money.text(line.invoiced()) + ", which was not in the estimate.";
		}
		if (line.invoiced().signum() == 0) {
			return line.text() + ": left out; " + Money.text(line.agreed()) + " were agreed.";
		}
		return line.text() + ": " + Money.text(line.invoiced()) + " instead of " + Money.text(line.agreed()) + ".";
	}

	private String beforeTax() {
		return money.taxPercent().signum() == 0 ? "" : " before tax";
	}

	private static String on(LocalDate day) {
		return day == null ? "" : " on " + day;
	}
}
