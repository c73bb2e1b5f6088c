package example;

import java.util.List;

import padwright.engine.length.LengthUnit;
import padwright.workup.report.Report;
import padwright.workup.report.ReportExtension;
import padwright.workup.report.ReportTable;
import padwright.workup.service.KeyJob;
import padwright.workup.service.ServicePlan;

/** Tells how many full shims each key has, and their sum. */
public final class ShimReport implements ReportExtension {

	@Override
	public String name() {
		return "shims";
	}

	@Override
	public String title() {
		return "Full shims";
	}

	@Override
	public Report report(ServicePlan plan) {
		if (plan.jobs().stream().allMatch(job -> job.stack().isEmpty())) {
			throw new IllegalArgumentException("has no full shims yet; solve it and note them");
		}
		ReportTable.Maker table = new ReportTable.Maker("").words("key").figures("shims", "thou");
		for (KeyJob job : plan.jobs()) {
			table.ofKey(job.name(), job.name(), String.valueOf(job.stack().size()),
					job.stackSum().in(LengthUnit.THOU, 2).toPlainString());
		}
		return new Report("Full shims of " + plan.plan().getName(), List.of(), List.of(table.table()));
	}
}
