package padwright.workup.words;

import java.util.Collection;
import java.util.Comparator;

/** Guesses which name was meant. */
public final class NearestName {

	private NearestName() {
	}

	/**
	 * The name with the fewest letters to change, the first of equals; empty among none. Words of earlier versions count
	 * as what they have become.
	 */
	public static String among(Collection<String> names, String written) {
		String renewed = FormerWords.renewed(written);
		String meant = names.contains(renewed) ? renewed : written;
		return names.stream().min(Comparator.comparingInt(name -> distance(name, meant))).orElse("");
	}

	/** Levenshtein's edit distance. */
	private static int distance(String from, String to) {
		int[] previous = new int[to.length() + 1];
		for (int column = 0; column <= to.length(); column++) {
			previous[column] = column;
		}
		for (int row = 1; row <= from.length(); row++) {
			int[] current = new int[to.length() + 1];
			current[0] = row;
			for (int column = 1; column <= to.length(); column++) {
				int replaced = previous[column - 1] + (from.charAt(row - 1) == to.charAt(column - 1) ? 0 : 1);
				current[column] = Math.min(replaced, Math.min(previous[column], current[column - 1]) + 1);
			}
			previous = current;
		}
		return previous[to.length()];
	}
}
