package padwright.exchange.csv;

import java.util.List;

/**
 * A row of a table.
 *
 * @param line where it begins, from 1
 */
public record CsvRow(List<String> cells, int line) {

	public CsvRow {
		cells = List.copyOf(cells);
	}

	/** The cell of a column from 0; empty where the row ends before it. */
	public String cell(int column) {
		return column < cells.size() ? cells.get(column) : "";
	}
}
