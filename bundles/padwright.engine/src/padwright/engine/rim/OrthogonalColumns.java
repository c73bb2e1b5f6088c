package padwright.engine.rim;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Linearly independent columns as orthonormal ones times an upper triangle (Gram–Schmidt, done twice). */
final class OrthogonalColumns {

	private final int size;
	private final List<double[]> orthonormal = new ArrayList<>();
	private final List<double[]> triangle = new ArrayList<>();

	OrthogonalColumns(int size) {
		this.size = size;
	}

	void add(double[] column) {
		double[] outside = column.clone();
		double[] inside = project(outside);
		double length = Math.sqrt(Vectors.dot(outside, outside));
		double[] unit = new double[size];
		Vectors.add(unit, 1 / length, outside);
		double[] entries = Arrays.copyOf(inside, inside.length + 1);
		entries[inside.length] = length;
		orthonormal.add(unit);
		triangle.add(entries);
	}

	/** Takes from a vector what lies in the span of the columns, and returns that part's coordinates. */
	double[] project(double[] vector) {
		double[] coordinates = new double[orthonormal.size()];
		for (int pass = 0; pass < 2; pass++) {
			for (int i = 0; i < coordinates.length; i++) {
				double along = Vectors.dot(orthonormal.get(i), vector);
				coordinates[i] += along;
				Vectors.add(vector, -along, orthonormal.get(i));
			}
		}
		return coordinates;
	}

	/** The factors of the columns that make up a vector of the given coordinates. */
	double[] solve(double[] coordinates) {
		double[] factors = coordinates.clone();
		for (int i = factors.length - 1; i >= 0; i--) {
			factors[i] /= triangle.get(i)[i];
			for (int above = 0; above < i; above++) {
				factors[above] -= triangle.get(i)[above] * factors[i];
			}
		}
		return factors;
	}

	/** The coordinates of the vector in the span whose products with the columns are given. */
	double[] solveTransposed(double[] products) {
		double[] coordinates = products.clone();
		for (int i = 0; i < coordinates.length; i++) {
			for (int before = 0; before < i; before++) {
				coordinates[i] -= triangle.get(i)[before] * coordinates[before];
			}
			coordinates[i] /= triangle.get(i)[i];
		}
		return coordinates;
	}

	/** The vector of the given coordinates. */
	double[] combine(double[] coordinates) {
		double[] vector = new double[size];
		for (int i = 0; i < coordinates.length; i++) {
			Vectors.add(vector, coordinates[i], orthonormal.get(i));
		}
		return vector;
	}
}
