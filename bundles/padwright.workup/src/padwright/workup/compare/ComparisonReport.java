package padwright.workup.compare;

import java.util.List;

import padwright.model.plan.Plan;
import padwright.workup.report.Report;
import padwright.workup.report.ReportTable;
import padwright.workup.words.Messages;

/** Two services of one instrument side by side, for people. */
public final class ComparisonReport {

	private ComparisonReport() {
	}

	/** A row for each change, in the order of the later plan; below it what did not change or stands in one plan alone. */
	public static Report of(PlanComparison comparison) {
		ReportTable.Maker table = new ReportTable.Maker("").words(Messages.of("compare.key"), Messages.of("compare.what"),
				named(comparison.then().plan()), named(comparison.now().plan()), Messages.of("compare.by"));
		comparison.keys().forEach(key -> key.changes().forEach(change -> table.ofKey(key.name(), key.label(),
				change.what(), change.then(), change.now(), change.by())));
		if (!comparison.sameInstrument()) {
			table.note(Messages.of("compare.serials", comparison.then().plan().getSerial(),
					comparison.now().plan().getSerial()));
		}
		note(table, comparison.unchanged(), "compare.unchanged");
		note(table, comparison.onlyThen(), "compare.onlyThen");
		note(table, comparison.onlyNow(), "compare.onlyNow");
		return new Report(Messages.of("compare.title", named(comparison.then().plan()), named(comparison.now().plan())),
				List.of(), List.of(table.table()));
	}

	private static void note(ReportTable.Maker table, List<String> keys, String words) {
		if (!keys.isEmpty()) {
			table.note(Messages.of(words, String.join(", ", keys)));
		}
	}

	private static String named(Plan plan) {
		return plan.getName() + (plan.getDate() == null ? "" : " " + plan.getDate());
	}
}
