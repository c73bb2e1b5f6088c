package padwright.engine.rim;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * The distance of a vector from the cone of some columns: the oracle that tells whether a gradient is a sum of active
 * constraints' normals with multipliers of the right sign. Active-set method of C. L. Lawson and R. J. Hanson (Solving
 * Least Squares Problems, 1974, chapter 23; from memory). What it answers is the length of an actual remainder, so a
 * fault here could only make it too long.
 */
final class NonNegativeLeastSquares {

	private final double[][] columns;
	private final double[] vector;
	private final List<Integer> used = new ArrayList<>();
	private final double[] factors;

	private NonNegativeLeastSquares(double[][] columns, double[] vector) {
		this.columns = columns;
		this.vector = vector;
		factors = new double[columns.length];
	}

	static double distance(double[][] columns, double[] vector, double enough) {
		NonNegativeLeastSquares search = new NonNegativeLeastSquares(columns, vector);
		for (int turn = 0; turn < 1_000 && length(search.remainder()) > enough; turn++) {
			int steepest = search.steepest();
			if (steepest < 0) {
				break;
			}
			search.use(steepest);
		}
		return length(search.remainder());
	}

	private double[] remainder() {
		double[] remainder = vector.clone();
		for (int i = 0; i < columns.length; i++) {
			Vectors.add(remainder, -factors[i], columns[i]);
		}
		return remainder;
	}

	private int steepest() {
		double[] remainder = remainder();
		int steepest = -1;
		double most = 0;
		for (int i = 0; i < columns.length; i++) {
			double gain = Vectors.dot(columns[i], remainder) / length(columns[i]);
			if (!used.contains(i) && gain > most) {
				most = gain;
				steepest = i;
			}
		}
		return steepest;
	}

	private void use(int column) {
		used.add(column);
		double[] best = bestFactors();
		while (Arrays.stream(best).anyMatch(factor -> factor < 0)) {
			double step = 1;
			for (int i = 0; i < best.length; i++) {
				double from = factors[used.get(i)];
				if (best[i] < 0) {
					step = Math.min(step, from / (from - best[i]));
				}
			}
			moveTowards(best, step);
			best = bestFactors();
		}
		moveTowards(best, 1);
	}

	private void moveTowards(double[] best, double step) {
		List<Integer> before = List.copyOf(used);
		for (int i = 0; i < best.length; i++) {
			int column = before.get(i);
			factors[column] += step * (best[i] - factors[column]);
			if (best[i] < 0 && factors[column] <= 1e-12 * length(vector)) {
				factors[column] = 0;
				used.remove((Integer) column);
			}
		}
	}

	private double[] bestFactors() {
		OrthogonalColumns orthogonal = new OrthogonalColumns(vector.length);
		used.forEach(column -> orthogonal.add(columns[column]));
		return orthogonal.solve(orthogonal.project(vector.clone()));
	}

	private static double length(double[] vector) {
		return Math.sqrt(Vectors.dot(vector, vector));
	}
}
