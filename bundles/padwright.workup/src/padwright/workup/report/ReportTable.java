package padwright.workup.report;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * A table of a report, in the language in which the program speaks; shown in the window, printed, or written as text.
 *
 * @param title what it is of; empty where the report says that already
 * @param columns at least one
 * @param rows each with a cell for each column
 * @param notes sentences that belong below it
 */
public record ReportTable(String title, List<Column> columns, List<Row> rows, List<String> notes) {

	/**
	 * A column.
	 *
	 * @param figure whether its cells are numbers, that stand to the right
	 */
	public record Column(String heading, boolean figure) {
	}

	/**
	 * A row.
	 *
	 * @param key the name of the key in the plan that it tells of, where it tells of one
	 * @param plan the name of the plan that it tells of, where that is not the one of the report
	 */
	public record Row(Optional<String> key, Optional<String> plan, List<String> cells) {

		public Row {
			cells = List.copyOf(cells);
		}
	}

	public ReportTable {
		columns = List.copyOf(columns);
		rows = List.copyOf(rows);
		notes = List.copyOf(notes);
		for (Row row : rows) {
			if (row.cells().size() != columns.size()) {
				throw new IllegalArgumentException(row.cells() + " are not cells for " + columns);
			}
		}
	}

	/** Makes a table row by row. */
	public static final class Maker {

		private final String title;
		private final List<Column> columns = new ArrayList<>();
		private final List<Row> rows = new ArrayList<>();
		private final List<String> notes = new ArrayList<>();

		/** @param title may be empty */
		public Maker(String title) {
			this.title = title;
		}

		/** Adds columns of words. */
		public Maker words(String... headings) {
			Arrays.stream(headings).forEach(heading -> columns.add(new Column(heading, false)));
			return this;
		}

		/** Adds columns of numbers. */
		public Maker figures(String... headings) {
			Arrays.stream(headings).forEach(heading -> columns.add(new Column(heading, true)));
			return this;
		}

		/** Adds a row that tells of no key. */
		public void row(String... cells) {
			rows.add(new Row(Optional.empty(), Optional.empty(), List.of(cells)));
		}

		/** Adds a row that tells of a key of the report's plan. */
		public void ofKey(String key, String... cells) {
			rows.add(new Row(Optional.of(key), Optional.empty(), List.of(cells)));
		}

		/** Adds a row that tells of a plan. */
		public void ofPlan(String plan, String... cells) {
			rows.add(new Row(Optional.empty(), Optional.of(plan), List.of(cells)));
		}

		/** Adds a row that tells of a key of a plan. */
		public void ofKeyIn(String plan, String key, String... cells) {
			rows.add(new Row(Optional.of(key), Optional.of(plan), List.of(cells)));
		}

		/** Adds a sentence below. */
		public void note(String sentence) {
			notes.add(sentence);
		}

		public ReportTable table() {
			return new ReportTable(title, columns, rows, notes);
		}
	}
}
