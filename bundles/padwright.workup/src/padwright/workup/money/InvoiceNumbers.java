package padwright.workup.money;

import java.util.Collection;
import java.util.List;
import java.util.TreeMap;
import java.util.stream.IntStream;
import java.util.stream.Stream;

import padwright.model.plan.Invoice;
import padwright.workup.job.JobRecord;
import padwright.workup.service.ServicePlan;

/**
 * The invoices of a shop by their numbers.
 *
 * @param plans for each number the plans that carry it, in rising order
 */
public record InvoiceNumbers(TreeMap<Integer, List<ServicePlan>> plans) {

	public static InvoiceNumbers of(Collection<ServicePlan> plans) {
		TreeMap<Integer, List<ServicePlan>> numbers = new TreeMap<>();
		for (ServicePlan plan : plans) {
			for (Invoice invoice : JobRecord.of(plan.plan()).all(Invoice.class)) {
				numbers.merge(invoice.getNumber(), List.of(plan),
						(some, more) -> Stream.concat(some.stream(), more.stream()).toList());
			}
		}
		return new InvoiceNumbers(numbers);
	}

	/** Numbers between the first and the last that no invoice carries. */
	public List<Integer> missing() {
		return plans.isEmpty() ? List.of() : IntStream.rangeClosed(plans.firstKey(), plans.lastKey())
				.filter(number -> !plans.containsKey(number)).boxed().toList();
	}

	/** Numbers that more than one invoice carries. */
	public List<Integer> twice() {
		return plans.entrySet().stream().filter(entry -> entry.getValue().size() > 1).map(entry -> entry.getKey()).toList();
	}

	/** The number for the next invoice. */
	public int next() {
		return plans.isEmpty() ? 1 : plans.lastKey() + 1;
	}
}
