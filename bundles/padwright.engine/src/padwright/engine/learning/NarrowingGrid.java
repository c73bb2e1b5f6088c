package padwright.engine.learning;

import java.util.Arrays;
import java.util.function.DoubleBinaryOperator;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;

/**
 * A grid over two quantities that narrows around what is believed: much evidence leaves a belief that a wide grid would see
 * at a single point.
 */
final class NarrowingGrid {

	/** What is believed e to this less than the likeliest is left out. */
	private static final double BELOW_LIKELIEST = 15;
	/** It narrows until it narrows by less than a tenth, and at most so often. */
	private static final int NARROWINGS = 12;
	private static final double NARROWER = 0.9;
	/** All points of less weight together change a mean by far less than its last digit that is told. */
	private static final double NEGLIGIBLE = 1e-8;

	/** What a side of the grid spans. */
	record Side(double from, double to, int steps) {

		double at(int step) {
			return from + (to - from) * step / (steps - 1);
		}

		private Side around(int[] believed) {
			int first = Arrays.stream(believed).min().orElseThrow();
			int last = Arrays.stream(believed).max().orElseThrow();
			return new Side(at(Math.max(0, first - 1)), at(Math.min(steps - 1, last + 1)), steps);
		}

		private boolean isNarrower(Side other) {
			return to - from < NARROWER * (other.to - other.from);
		}
	}

	private Side rows;
	private Side columns;
	private final WeightedGrid grid;

	/**
	 * @param beliefs for what a row stands for, the logarithm of what is believed of each column, up to a constant, with the
	 *        share of the cell in it; asked once for each row
	 */
	NarrowingGrid(Side rows, Side columns, Beliefs beliefs) {
		this.rows = rows;
		this.columns = columns;
		double[] all = all(beliefs);
		for (int narrowing = 0; narrowing < NARROWINGS && narrow(all); narrowing++) {
			all = all(beliefs);
		}
		grid = new WeightedGrid(all);
	}

	/** What is believed, given what a row stands for. */
	interface Beliefs {

		DoubleUnaryOperator of(double row);
	}

	private double[] all(Beliefs beliefs) {
		double[] all = new double[rows.steps() * columns.steps()];
		for (int row = 0; row < rows.steps(); row++) {
			DoubleUnaryOperator belief = beliefs.of(rows.at(row));
			for (int column = 0; column < columns.steps(); column++) {
				all[row * columns.steps() + column] = belief.applyAsDouble(columns.at(column));
			}
		}
		return all;
	}

	private boolean narrow(double[] beliefs) {
		double least = Arrays.stream(beliefs).max().orElseThrow() - BELOW_LIKELIEST;
		int[] believed = IntStream.range(0, beliefs.length).filter(point -> beliefs[point] > least).toArray();
		Side narrowRows = rows.around(Arrays.stream(believed).map(point -> point / columns.steps()).toArray());
		Side narrowColumns = columns.around(Arrays.stream(believed).map(point -> point % columns.steps()).toArray());
		boolean isNarrower = narrowRows.isNarrower(rows) || narrowColumns.isNarrower(columns);
		if (isNarrower) {
			rows = narrowRows;
			columns = narrowColumns;
		}
		return isNarrower;
	}

	double row(int point) {
		return rows.at(point / columns.steps());
	}

	double column(int point) {
		return columns.at(point % columns.steps());
	}

	/** The mean of a function of row and column. */
	double mean(DoubleBinaryOperator value) {
		return grid.mean(point -> grid.weight(point) < NEGLIGIBLE ? 0 : value.applyAsDouble(row(point), column(point)));
	}

	/** Median and interval of a function of row and column. */
	Learned learned(DoubleBinaryOperator value) {
		return grid.learned(point -> value.applyAsDouble(row(point), column(point)));
	}
}
