package padwright.exchange.csv;

import java.util.List;

import padwright.exchange.tree.Branch;
import padwright.exchange.tree.ExchangeException;

/** Documents as one table for spreadsheets. */
public final class CsvExchange {

	private CsvExchange() {
	}

	/** The table of a document, with commas between cells. */
	public static String write(Branch document) {
		List<List<String>> rows = TableWriter.table(document);
		return CsvText.write(rows.stream().map(row -> row.stream().map(FormulaGuard::guarded).toList()).toList());
	}

	/**
	 * The tree of a document.
	 *
	 * @throws ExchangeException if the text is no such table
	 */
	public static Branch read(String text) throws ExchangeException {
		return TableReader.document(CsvText.read(text, Separator.of(text)));
	}
}
