package padwright.engine.rim;

import java.util.Arrays;

/**
 * A small linear programme: maximise value · x over x ≥ 0, where some weighted sums of x are zero and others at most
 * one. Primal simplex method on a dense table with Bland's rule (lowest index first), which ends, and takes the same
 * path on every machine.
 */
final class LinearProgram {

	private static final double SMALL = 1e-9;
	private static final double NO_GAIN = 1e-11;

	private final int variables;
	private final int columns;
	private final double[][] rows;
	private final double[] reduced;
	private final int[] basis;

	/**
	 * A best x.
	 *
	 * @param total value · x
	 * @param x one number for each variable
	 * @param slack what each of the sums of at most one is short of it
	 */
	record Solution(double total, double[] x, double[] slack) {
	}

	private LinearProgram(double[] value, double[][] zeroSums, double[][] unitSums) {
		variables = value.length;
		columns = variables + unitSums.length;
		rows = new double[zeroSums.length + unitSums.length][];
		basis = new int[rows.length];
		reduced = Arrays.copyOf(value, columns + 1);
		for (int row = 0; row < rows.length; row++) {
			int unitSum = row - zeroSums.length;
			rows[row] = Arrays.copyOf(unitSum < 0 ? zeroSums[row] : unitSums[unitSum], columns + 1);
			if (unitSum >= 0) {
				basis[row] = variables + unitSum;
				rows[row][basis[row]] = 1;
				rows[row][columns] = 1;
			}
		}
		for (int row = 0; row < zeroSums.length; row++) {
			pivot(row, largest(rows[row]));
		}
	}

	/**
	 * @param value so scaled that differences below 1e-11 do not matter; the programme is bounded
	 * @param zeroSums linearly independent weights, [sum][variable]
	 * @param unitSums weights, [sum][variable]
	 */
	static Solution maximise(double[] value, double[][] zeroSums, double[][] unitSums) {
		LinearProgram program = new LinearProgram(value, zeroSums, unitSums);
		for (int column = program.entering(); column >= 0; column = program.entering()) {
			program.pivot(program.leaving(column), column);
		}
		return program.solution(value);
	}

	private int largest(double[] row) {
		int largest = 0;
		for (int column = 1; column < variables; column++) {
			if (Math.abs(row[column]) > Math.abs(row[largest]) + SMALL) {
				largest = column;
			}
		}
		return largest;
	}

	/** The first variable that would raise the total, or -1. */
	private int entering() {
		for (int column = 0; column < columns; column++) {
			if (reduced[column] > NO_GAIN) {
				return column;
			}
		}
		return -1;
	}

	/** The row that first limits the entering variable; of equal limits the one whose variable comes first. */
	private int leaving(int column) {
		int leaving = -1;
		double least = Double.POSITIVE_INFINITY;
		for (int row = 0; row < rows.length; row++) {
			if (rows[row][column] > SMALL) {
				double limit = rows[row][columns] / rows[row][column];
				boolean tie = Math.abs(limit - least) <= SMALL;
				if (tie ? basis[row] < basis[leaving] : limit < least) {
					least = limit;
					leaving = row;
				}
			}
		}
		if (leaving < 0) {
			throw new IllegalArgumentException("the linear programme has no bound");
		}
		return leaving;
	}

	private void pivot(int row, int column) {
		double[] pivotRow = rows[row];
		double by = pivotRow[column];
		for (int i = 0; i <= columns; i++) {
			pivotRow[i] /= by;
		}
		for (double[] other : rows) {
			if (other != pivotRow) {
				clear(other, pivotRow, column);
			}
		}
		clear(reduced, pivotRow, column);
		basis[row] = column;
	}

	private void clear(double[] row, double[] pivotRow, int column) {
		double factor = row[column];
		if (factor != 0) {
			for (int i = 0; i <= columns; i++) {
				row[i] -= factor * pivotRow[i];
			}
			row[column] = 0;
		}
	}

	private Solution solution(double[] value) {
		double[] all = new double[columns];
		for (int row = 0; row < rows.length; row++) {
			all[basis[row]] = rows[row][columns];
		}
		double total = 0;
		for (int variable = 0; variable < variables; variable++) {
			total += value[variable] * all[variable];
		}
		return new Solution(total, Arrays.copyOf(all, variables), Arrays.copyOfRange(all, variables, columns));
	}
}
