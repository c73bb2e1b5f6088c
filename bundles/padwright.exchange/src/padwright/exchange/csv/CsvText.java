package padwright.exchange.csv;

import java.util.ArrayList;
import java.util.List;

import padwright.exchange.tree.ExchangeException;


/**
 * Rows of cells as text, after RFC 4180: cells with a separator, a quote or a line end stand in quotes, and a quote in
 * them is doubled. Lines may end in CRLF, LF or CR; a byte order mark at the beginning is passed over.
 */
public final class CsvText {

	private static final char QUOTE = '"';
	private static final String BYTE_ORDER_MARK = "\uFEFF";
	private static final String LINE_END = "\r\n";

	private final String text;
	private final char separator;
	private final List<CsvRow> rows = new ArrayList<>();
	private final List<String> cells = new ArrayList<>();
	private int at;
	private int line = 1;
	private int rowLine = 1;

	private CsvText(String text, char separator) {
		this.text = text;
		this.separator = separator;
	}

	/**
	 * The rows that are not empty.
	 *
	 * @throws ExchangeException if a quote is out of place
	 */
	public static List<CsvRow> read(String text, char separator) throws ExchangeException {
		CsvText csv = new CsvText(text.startsWith(BYTE_ORDER_MARK) ? text.substring(1) : text, separator);
		csv.readAll();
		return csv.rows;
	}

	private void readAll() throws ExchangeException {
		while (at < text.length()) {
			do {
				cells.add(at < text.length() && text.charAt(at) == QUOTE ? quoted() : plain());
			} while (passesSeparator());
			if (at < text.length() && !isLineEnd(at)) {
				throw new ExchangeException(line, "something stands behind a closing quote; double a quote inside a cell");
			}
			endRow();
		}
	}

	private boolean passesSeparator() {
		boolean isHere = at < text.length() && text.charAt(at) == separator;
		at += isHere ? 1 : 0;
		return isHere;
	}

	private String plain() throws ExchangeException {
		int start = at;
		while (at < text.length() && text.charAt(at) != separator && !isLineEnd(at)) {
			if (text.charAt(at) == QUOTE) {
				throw new ExchangeException(line, "a quote stands inside a cell; put the cell into quotes and double it");
			}
			at++;
		}
		return text.substring(start, at);
	}

	private String quoted() throws ExchangeException {
		int opened = line;
		StringBuilder cell = new StringBuilder();
		at++;
		while (at < text.length()) {
			char next = text.charAt(at);
			if (next == QUOTE) {
				at++;
				if (at == text.length() || text.charAt(at) != QUOTE) {
					return cell.toString();
				}
			}
			countLine();
			cell.append(text.charAt(at++));
		}
		throw new ExchangeException(opened, "a quote is opened here and never closed");
	}

	private boolean isLineEnd(int index) {
		return text.charAt(index) == '\n' || text.charAt(index) == '\r';
	}

	/** Counts a line at the last character of its end. */
	private void countLine() {
		boolean first = text.charAt(at) == '\r' && at + 1 < text.length() && text.charAt(at + 1) == '\n';
		line += isLineEnd(at) && !first ? 1 : 0;
	}

	private void endRow() {
		if (cells.stream().anyMatch(cell -> !cell.isBlank())) {
			rows.add(new CsvRow(List.copyOf(cells), rowLine));
		}
		cells.clear();
		while (at < text.length() && isLineEnd(at)) {
			countLine();
			at++;
		}
		rowLine = line;
	}

	/** Rows with commas between cells and CRLF behind each row. */
	public static String write(List<List<String>> rows) {
		StringBuilder text = new StringBuilder();
		for (List<String> row : rows) {
			text.append(String.join(",", row.stream().map(CsvText::written).toList())).append(LINE_END);
		}
		return text.toString();
	}

	private static String written(String cell) {
		boolean plain = cell.chars().noneMatch(c -> c == ',' || c == QUOTE || c == '\n' || c == '\r')
				&& cell.equals(cell.strip());
		return plain ? cell : QUOTE + cell.replace("\"", "\"\"") + QUOTE;
	}
}
