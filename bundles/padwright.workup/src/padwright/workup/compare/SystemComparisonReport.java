package padwright.workup.compare;

import java.util.List;

import padwright.model.keysystem.KeySystem;
import padwright.workup.report.Report;
import padwright.workup.report.ReportTable;
import padwright.workup.words.Messages;

/** Two key systems side by side, for people. */
public final class SystemComparisonReport {

	private SystemComparisonReport() {
	}

	/** A row for each difference, in the order of the newer system; below it the parts that one of them lacks. */
	public static Report of(SystemComparison comparison) {
		KeySystem then = comparison.then();
		KeySystem now = comparison.now();
		ReportTable.Maker table = new ReportTable.Maker("").words(Messages.of("compare.part"), Messages.of("compare.what"),
				then.getName(), now.getName(), Messages.of("compare.by"));
		comparison.parts().forEach(part -> part.changes().forEach(change -> table.row(part.label(), change.what(),
				change.then(), change.now(), change.by())));
		note(table, then, comparison.onlyThen());
		note(table, now, comparison.onlyNow());
		return new Report(Messages.of("compare.title", then.getName(), now.getName()), List.of(), List.of(table.table()));
	}

	private static void note(ReportTable.Maker table, KeySystem system, List<String> parts) {
		if (!parts.isEmpty()) {
			table.note(Messages.of("compare.onlyIn", system.getName(), String.join(", ", parts)));
		}
	}
}
