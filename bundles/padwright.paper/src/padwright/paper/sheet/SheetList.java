package padwright.paper.sheet;

import java.util.List;

/**
 * A table of a layout sheet.
 *
 * @param heads of the columns
 */
public record SheetList(String title, List<String> heads, List<List<String>> rows) {

	/** @throws IllegalArgumentException if a row has more or fewer cells than there are columns */
	public SheetList {
		heads = List.copyOf(heads);
		rows = rows.stream().map(List::copyOf).toList();
		int columns = heads.size();
		if (rows.stream().anyMatch(row -> row.size() != columns)) {
			throw new IllegalArgumentException("a table of " + columns + " columns has rows of another number");
		}
	}
}
