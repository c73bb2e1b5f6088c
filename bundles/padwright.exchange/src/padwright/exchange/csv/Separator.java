package padwright.exchange.csv;

/** What stands between the cells of a table. */
public final class Separator {

	private static final char[] KNOWN = { ';', '\t', ',' };

	private Separator() {
	}

	/**
	 * The character that parts the cells of the first line: the most frequent of semicolon, tab and comma outside of
	 * quotes, the first of these where they are as many; a comma where there is none.
	 */
	public static char of(String text) {
		String first = text.lines().filter(line -> !line.isBlank()).findFirst().orElse("").replaceAll("\"[^\"]*\"", "");
		char best = ',';
		long most = 0;
		for (char candidate : KNOWN) {
			long count = first.chars().filter(c -> c == candidate).count();
			if (count > most) {
				best = candidate;
				most = count;
			}
		}
		return best;
	}
}
