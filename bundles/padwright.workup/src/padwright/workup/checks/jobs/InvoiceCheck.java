package padwright.workup.checks.jobs;

import java.util.List;

import padwright.model.plan.Invoice;
import padwright.model.plan.PlanPackage;
import padwright.workup.checks.Advice;
import padwright.workup.checks.Check;
import padwright.workup.checks.Findings;
import padwright.workup.checks.IssueCodes;
import padwright.workup.checks.Place;
import padwright.workup.money.MoneyDifference;
import padwright.workup.money.PlanMoney;
import padwright.workup.service.ServicePlan;
import padwright.workup.words.Amount;
import padwright.workup.words.Listed;
import padwright.workup.words.Phrase;

/** An invoice has a number, and the player hears of what differs from what was agreed. */
public final class InvoiceCheck extends Check<ServicePlan> {

	public InvoiceCheck() {
		super(ServicePlan.class);
	}

	@Override
	protected void check(ServicePlan plan, Findings findings) {
		PlanMoney money = new PlanMoney(plan);
		for (Invoice invoice : money.invoices()) {
			if (invoice.getNumber() < 1) {
				findings.error(IssueCodes.INVOICE_NUMBER, place(invoice), Advice.of(IssueCodes.INVOICE_NUMBER));
			}
		}
		List<MoneyDifference> differences = money.differences();
		if (!differences.isEmpty()) {
			Listed lines = new Listed(differences.stream().map(line -> Phrase.of("report.money.differs", line.text(),
					new Amount(line.invoiced()), new Amount(line.agreed()))).toList(), "; ");
			findings.info(IssueCodes.INVOICE_DIFFERS, place(money.invoice().orElseThrow()),
					Advice.of(IssueCodes.INVOICE_DIFFERS, lines));
		}
	}

	private static Place place(Invoice invoice) {
		return Place.of(invoice, PlanPackage.Literals.INVOICE__NUMBER);
	}
}
