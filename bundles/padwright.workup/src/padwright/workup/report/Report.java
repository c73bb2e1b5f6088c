package padwright.workup.report;

import java.util.List;

/**
 * What is told about a plan or a shop, in the language in which the program speaks.
 *
 * @param title as in {@code Leak of First}
 */
public record Report(String title, List<ReportTable> tables) {

	public Report {
		tables = List.copyOf(tables);
	}

	/** Whether there is nothing to tell. */
	public boolean isEmpty() {
		return tables.stream().allMatch(table -> table.rows().isEmpty() && table.notes().isEmpty());
	}
}
