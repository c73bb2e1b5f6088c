package padwright.views.rows;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import padwright.workup.checks.Finding;
import padwright.workup.service.ServicePlan;

/** The rows of the table of keys. */
public record KeyRows(List<KeyRow> rows) {

	public KeyRows {
		rows = List.copyOf(rows);
	}

	/**
	 * Every key of a plan: those with a row in its order, then those without. Fits every round: not for the window's
	 * thread.
	 *
	 * @param findings of all checks on the plan
	 */
	public static KeyRows of(ServicePlan plan, List<Finding> findings) {
		List<KeyRow> rows = new ArrayList<>();
		plan.jobs().forEach(job -> rows.add(KeyRow.of(rows.size(), job, findings)));
		plan.missingKeys().forEach(key -> rows.add(KeyRow.missing(rows.size(), key)));
		return new KeyRows(rows);
	}

	/** In the order of a column; equals stay as they are. */
	public KeyRows sorted(KeyColumn column, boolean descending) {
		Comparator<KeyRow> order = descending ? column.order().reversed() : column.order();
		return new KeyRows(rows.stream().sorted(order).toList());
	}

	/** Those of which any cell says every word of {@code text}. */
	public KeyRows filtered(String text) {
		return new KeyRows(rows.stream()
				.filter(row -> Stream.of(text.strip().split("\\s+")).allMatch(row::says)).toList());
	}

	/** For a spreadsheet: headings and rows, cells apart by tabs, one row a line. */
	public static String tabSeparated(List<KeyRow> rows) {
		return Stream.concat(Stream.of(line(KeyColumn::heading)),
				rows.stream().map(row -> line(column -> column.text(row)))).collect(Collectors.joining("\n", "", "\n"));
	}

	private static String line(Function<KeyColumn, String> cell) {
		return Stream.of(KeyColumn.values()).map(column -> cell.apply(column).replaceAll("[\t\n\r]", " "))
				.collect(Collectors.joining("\t"));
	}
}
