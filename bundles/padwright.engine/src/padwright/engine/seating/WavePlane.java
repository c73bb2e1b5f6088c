package padwright.engine.seating;

/**
 * A plane of two waves of a lift, cut into cells, each of which holds the set of rims, of 64 at most, that a lift with waves
 * in it may level.
 */
final class WavePlane {

	private static final int CELLS = 56;

	private final double lowX;
	private final double lowY;
	private final double perX;
	private final double perY;
	private final double cellX;
	private final double cellY;
	private final long[] sets = new long[CELLS * CELLS];
	private final int[] counts = new int[CELLS * CELLS];

	/** A plane over a box, without a rim in it yet. */
	WavePlane(double lowX, double highX, double lowY, double highY) {
		this.lowX = lowX;
		this.lowY = lowY;
		cellX = Math.max(1, (highX - lowX) / CELLS);
		cellY = Math.max(1, (highY - lowY) / CELLS);
		perX = 1 / cellX;
		perY = 1 / cellY;
	}

	/** Adds a rim to all cells that meet a disc. */
	void addDisc(int rim, double x, double y, double radius) {
		for (int column = column(x - radius); column <= column(x + radius); column++) {
			double acrossX = outside(x, lowX + column * cellX, cellX);
			double half = Math.sqrt(Math.max(0, radius * radius - acrossX * acrossX));
			addColumn(rim, column, y - half, y + half);
		}
	}

	/** Adds a rim to all cells that meet the strip low ≤ x + slope · y ≤ high. */
	void addStrip(int rim, double slope, double low, double high) {
		for (int row = 0; row < CELLS; row++) {
			double from = lowY + row * cellY;
			double least = slope * (slope > 0 ? from : from + cellY);
			double most = slope * (slope > 0 ? from + cellY : from);
			for (int column = column(low - most); column <= column(high - least); column++) {
				add(rim, column, row);
			}
		}
	}

	private void addColumn(int rim, int column, double low, double high) {
		for (int row = row(low); row <= row(high); row++) {
			add(rim, column, row);
		}
	}

	private void add(int rim, int column, int row) {
		int cell = column * CELLS + row;
		sets[cell] |= 1L << rim;
		counts[cell]++;
	}

	private static double outside(double value, double from, double width) {
		return Math.max(0, Math.max(from - value, value - from - width));
	}

	private int column(double x) {
		return within((x - lowX) / cellX);
	}

	private int row(double y) {
		return within((y - lowY) / cellY);
	}

	private static int within(double cell) {
		return (int) Math.max(0, Math.min(cell, CELLS - 1));
	}

	/** The cell of a lift, or -1 outside the box. */
	int cell(double x, double y) {
		double column = (x - lowX) * perX;
		double row = (y - lowY) * perY;
		return column >= 0 && column < CELLS && row >= 0 && row < CELLS ? (int) column * CELLS + (int) row : -1;
	}

	/** The same, or -1 also where fewer rims than {@code least} are. */
	int cell(double x, double y, int least) {
		int cell = cell(x, y);
		return cell < 0 || counts[cell] < least ? -1 : cell;
	}

	/** The rims of a cell, as bits. */
	long set(int cell) {
		return sets[cell];
	}
}
