package padwright.commands;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

import padwright.workup.report.Report;
import padwright.workup.report.ReportTable;

/** A table of text whose columns are as wide as they need to be. The last column is not padded. */
final class TextTable {

	private static final String GAP = "  ";

	private final List<List<String>> rows = new ArrayList<>();

	TextTable(String... heads) {
		row(heads);
	}

	/** A report: its leading sentences, then its tables, each with its notes below it. */
	static void print(PrintWriter out, Report report) {
		report.leads().forEach(out::println);
		boolean first = report.leads().isEmpty();
		for (ReportTable table : report.tables()) {
			if (!first) {
				out.println();
			}
			print(out, table);
			first = false;
		}
	}

	private static void print(PrintWriter out, ReportTable table) {
		if (!table.title().isEmpty()) {
			out.println(table.title());
		}
		if (!table.rows().isEmpty()) {
			TextTable text = new TextTable(table.columns().stream().map(ReportTable.Column::heading)
					.toArray(String[]::new));
			table.rows().forEach(row -> text.row(row.cells().toArray(String[]::new)));
			text.print(out);
		}
		table.notes().forEach(out::println);
	}

	/** Adds a row with as many cells as there are heads. */
	void row(String... cells) {
		rows.add(List.of(cells));
	}

	void print(PrintWriter out) {
		int[] widths = new int[rows.get(0).size()];
		rows.forEach(row -> Arrays.setAll(widths, column -> Math.max(widths[column], width(row.get(column)))));
		for (List<String> row : rows) {
			StringBuilder line = new StringBuilder();
			for (int column = 0; column < widths.length; column++) {
				String cell = row.get(column);
				line.append(cell).append(" ".repeat(widths[column] - width(cell))).append(GAP);
			}
			out.println(line.toString().stripTrailing());
		}
	}

	private static int width(String text) {
		return text.codePointCount(0, text.length());
	}
}
