package padwright.workup.report;

import java.util.List;

/**
 * What is told about a plan or a shop, in the language in which the program speaks.
 *
 * @param title as in {@code Leak of First}
 * @param leads sentences that belong above its tables
 */
public record Report(String title, List<String> leads, List<ReportTable> tables) {

	public Report {
		leads = List.copyOf(leads);
		tables = List.copyOf(tables);
	}
}
