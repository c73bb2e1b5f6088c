package padwright.commands;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import padwright.workup.report.Report;
import padwright.workup.report.ReportTable;
import padwright.workup.report.ReportTable.Column;
import padwright.workup.report.ReportTable.Row;

/** Any report for programs, as it is told to people: by its tables. */
final class ReportJson {

	private ReportJson() {
	}

	static Map<String, Object> of(Report report) {
		Map<String, Object> json = new LinkedHashMap<>();
		json.put("title", report.title());
		json.put("leads", report.leads());
		json.put("tables", report.tables().stream().map(ReportJson::table).toList());
		return json;
	}

	private static Map<String, Object> table(ReportTable table) {
		Map<String, Object> json = new LinkedHashMap<>();
		json.put("title", table.title());
		json.put("columns", table.columns().stream().map(Column::heading).toList());
		json.put("rows", table.rows().stream().map(Row::cells).map(List::copyOf).toList());
		json.put("notes", table.notes());
		return json;
	}
}
