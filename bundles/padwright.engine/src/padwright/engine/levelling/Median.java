package padwright.engine.levelling;

/** Hoare's selection over rows of a table. */
final class Median {

	private Median() {
	}

	/**
	 * Reorders the rows {@code begin} to before {@code end}, so that none before {@code middle} has a larger value in
	 * {@code column} than any from there on.
	 */
	static void split(int[] rows, int begin, int end, int middle, int[] table, int width, int column) {
		int low = begin;
		int high = end - 1;
		while (low < high) {
			int pivot = value(rows[(low + high) >>> 1], table, width, column);
			int up = low;
			int down = high;
			while (up <= down) {
				while (value(rows[up], table, width, column) < pivot) {
					up++;
				}
				while (value(rows[down], table, width, column) > pivot) {
					down--;
				}
				if (up <= down) {
					int swapped = rows[up];
					rows[up++] = rows[down];
					rows[down--] = swapped;
				}
			}
			if (middle <= down) {
				high = down;
			} else if (middle >= up) {
				low = up;
			} else {
				return;
			}
		}
	}

	private static int value(int row, int[] table, int width, int column) {
		return table[row * width + column];
	}
}
