package padwright.views.report;

import java.math.BigDecimal;
import java.text.Collator;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import padwright.workup.report.ReportTable;
import padwright.workup.report.ReportTable.Column;
import padwright.workup.report.ReportTable.Row;

/** The rows of a table of a report, sorted and filtered as the user wants them. */
public record ReportRows(List<Column> columns, List<Row> rows) {

	private static final Pattern FIGURE = Pattern.compile("[+\u2212-]?\\d+([.,]\\d+)?");

	public ReportRows {
		columns = List.copyOf(columns);
		rows = List.copyOf(rows);
	}

	public static ReportRows of(ReportTable table) {
		return new ReportRows(table.columns(), table.rows());
	}

	/** Those of which any cell says every word of {@code text}, capitals or not. */
	public ReportRows filtered(String text) {
		return new ReportRows(columns, rows.stream().filter(row -> Stream.of(text.strip().toLowerCase(Locale.ROOT)
				.split("\\s+")).allMatch(word -> says(row, word))).toList());
	}

	private static boolean says(Row row, String word) {
		return row.cells().stream().anyMatch(cell -> cell.toLowerCase(Locale.ROOT).contains(word));
	}

	/** In the order of a column: numbers by their size, words as a dictionary has them; what says nothing comes last. */
	public ReportRows sorted(int column, boolean descending) {
		Comparator<String> order = columns.get(column).figure() ? Comparator.comparing(ReportRows::figure)
				: Collator.getInstance()::compare;
		Comparator<Row> rowOrder = Comparator.comparing(row -> row.cells().get(column),
				descending ? order.reversed() : order);
		return new ReportRows(columns, rows.stream()
				.sorted(Comparator.comparing((Row row) -> isNothing(row, column)).thenComparing(rowOrder)).toList());
	}

	private boolean isNothing(Row row, int column) {
		String cell = row.cells().get(column);
		return cell.isEmpty() || columns.get(column).figure() && number(cell).isEmpty();
	}

	private static BigDecimal figure(String cell) {
		return number(cell).orElse(BigDecimal.ZERO);
	}

	private static Optional<BigDecimal> number(String cell) {
		Matcher figure = FIGURE.matcher(cell);
		return figure.find() ? Optional.of(new BigDecimal(figure.group().replace(',', '.').replace('\u2212', '-')))
				: Optional.empty();
	}

	/** For a spreadsheet: headings and rows, cells apart by tabs, one row a line. */
	public String tabSeparated() {
		return Stream.concat(Stream.of(columns.stream().map(Column::heading).toList()), rows.stream().map(Row::cells))
				.map(cells -> cells.stream().map(cell -> cell.strip().replaceAll("[\t\n\r]", " "))
						.collect(Collectors.joining("\t")))
				.collect(Collectors.joining("\n", "", "\n"));
	}
}
