package padwright.workup.money;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

import padwright.engine.quote.Money;
import padwright.model.plan.Agreement;
import padwright.model.plan.Deposit;
import padwright.model.plan.Estimate;
import padwright.model.plan.EstimateOption;
import padwright.model.plan.Invoice;
import padwright.model.stock.Letterhead;
import padwright.workup.job.JobRecord;
import padwright.workup.job.Letterheads;
import padwright.workup.service.ServicePlan;

/** The money of one plan: what was offered, what was agreed, what was invoiced, what was paid before. */
public final class PlanMoney {

	private final ServicePlan plan;
	private final JobRecord record;

	public PlanMoney(ServicePlan plan) {
		this.plan = plan;
		this.record = JobRecord.of(plan.plan());
	}

	public ServicePlan plan() {
		return plan;
	}

	/** All options of all estimates, in their order. */
	public List<EstimateOption> options() {
		return record.all(Estimate.class).stream().flatMap(estimate -> estimate.getOptions().stream()).toList();
	}

	/** The option that was agreed on last; nothing where none was, or no estimate has it. */
	public Optional<EstimateOption> agreed() {
		return record.last(Agreement.class).map(Agreement::getOption)
				.flatMap(name -> options().stream().filter(option -> name.equals(option.getName()))
						.reduce((earlier, later) -> later));
	}

	/** All invoices, in their order. */
	public List<Invoice> invoices() {
		return record.all(Invoice.class);
	}

	/** The last invoice. */
	public Optional<Invoice> invoice() {
		return record.last(Invoice.class);
	}

	/** Per cent of tax: that of the invoice, else that of the shop's letterhead, else none. */
	public BigDecimal taxPercent() {
		return Stream.of(invoice().map(Invoice::getTax),
				Letterheads.of(plan).map(Letterhead::getTax)).flatMap(Optional::stream).findFirst()
				.orElse(BigDecimal.ZERO);
	}

	/** Money that was paid before. */
	public BigDecimal deposits() {
		return record.all(Deposit.class).stream().map(Deposit::getAmount).filter(amount -> amount != null)
				.map(Money::rounded).reduce(Money.rounded(BigDecimal.ZERO), BigDecimal::add);
	}

	/** What is to be paid still, the tax in it, for a net sum. */
	public BigDecimal balance(BigDecimal net) {
		return net.add(Sum.tax(net, taxPercent())).subtract(deposits());
	}

	/** By what the invoice differs from what was agreed, line by line; nothing where one of both is not there. */
	public List<MoneyDifference> differences() {
		return agreed().flatMap(option -> invoice().map(invoice -> MoneyDifference.between(option.getItems(),
				invoice.getItems()))).orElse(List.of());
	}
}
