package padwright.exchange.csv;

import java.util.regex.Pattern;

/**
 * Keeps a spreadsheet from taking a cell for a formula: what begins like one gets an apostrophe before it, which
 * reading takes away again. Plain numbers stay as they are.
 */
final class FormulaGuard {

	private static final String APOSTROPHE = "'";
	private static final String SUSPICIOUS = "=+-@\t\r\n'";
	private static final Pattern NUMBER = Pattern.compile("-?[0-9]+(\\.[0-9]+)?");

	private FormulaGuard() {
	}

	static String guarded(String cell) {
		boolean harmless = cell.isEmpty() || SUSPICIOUS.indexOf(cell.charAt(0)) < 0 || NUMBER.matcher(cell).matches();
		return harmless ? cell : APOSTROPHE + cell;
	}

	static String bare(String cell) {
		return cell.startsWith(APOSTROPHE) ? cell.substring(1) : cell;
	}
}
