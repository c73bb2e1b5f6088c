package padwright.engine.acoustics;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.SplittableRandom;

import org.junit.jupiter.api.Test;

class BoxedMinimumTest {

	/** Against each way to hold or free every variable, of which the least that is allowed is the answer. */
	@Test
	void isTheLeastOfAllWaysToHoldVariables() {
		SplittableRandom random = new SplittableRandom(77);
		for (int trial = 0; trial < 300; trial++) {
			int size = random.nextInt(1, 6);
			double[][] matrix = definite(size, random);
			double[] right = random.doubles(size, -3, 3).toArray();
			double[] least = random.doubles(size, -1, 0).toArray();
			double[] most = random.doubles(size, 0, 1).toArray();
			double[] found = new BoxedMinimum(matrix, right, least, most).find();
			for (int index = 0; index < size; index++) {
				assertTrue(found[index] >= least[index] && found[index] <= most[index]);
			}
			assertEquals(leastOfAll(matrix, right, least, most), value(matrix, right, found), 1e-9);
		}
	}

	/** A variable that starts at its bound and wants out of the box stays, one that wants in leaves. */
	@Test
	void startsAtABound() {
		double[][] matrix = { { 2, 0 }, { 0, 2 } };
		double[] found = new BoxedMinimum(matrix, new double[] { -2, 2 }, new double[] { 0, 0 }, new double[] { 5, 5 })
				.find();
		assertArrayEquals(new double[] { 0, 1 }, found, 1e-12);
	}

	private static double[][] definite(int size, SplittableRandom random) {
		double[][] root = new double[size][];
		for (int row = 0; row < size; row++) {
			root[row] = random.doubles(size, -1, 1).toArray();
		}
		double[][] matrix = new double[size][size];
		for (int row = 0; row < size; row++) {
			for (int column = 0; column < size; column++) {
				for (int inner = 0; inner < size; inner++) {
					matrix[row][column] += root[row][inner] * root[column][inner];
				}
			}
			matrix[row][row] += 0.05;
		}
		return matrix;
	}

	/** Held variables in base 3: at the least, at the most, or free; the free ones by elimination. */
	private static double leastOfAll(double[][] matrix, double[] right, double[] least, double[] most) {
		double best = Double.POSITIVE_INFINITY;
		int ways = (int) Math.pow(3, right.length);
		for (int way = 0; way < ways; way++) {
			double[] point = solved(matrix, right, least, most, way);
			boolean isInside = true;
			for (int index = 0; index < point.length; index++) {
				isInside &= point[index] >= least[index] - 1e-12 && point[index] <= most[index] + 1e-12;
			}
			best = isInside ? Math.min(best, value(matrix, right, point)) : best;
		}
		return best;
	}

	private static double[] solved(double[][] matrix, double[] right, double[] least, double[] most, int way) {
		int size = right.length;
		double[][] rows = new double[size][size + 1];
		int digits = way;
		for (int row = 0; row < size; row++, digits /= 3) {
			if (digits % 3 == 2) {
				System.arraycopy(matrix[row], 0, rows[row], 0, size);
				rows[row][size] = right[row];
			} else {
				rows[row][row] = 1;
				rows[row][size] = digits % 3 == 0 ? least[row] : most[row];
			}
		}
		for (int pivot = 0; pivot < size; pivot++) {
			for (int row = 0; row < size; row++) {
				double factor = row == pivot ? 0 : rows[row][pivot] / rows[pivot][pivot];
				for (int column = 0; column <= size; column++) {
					rows[row][column] -= factor * rows[pivot][column];
				}
			}
		}
		double[] point = new double[size];
		for (int row = 0; row < size; row++) {
			point[row] = rows[row][size] / rows[row][row];
		}
		return point;
	}

	private static double value(double[][] matrix, double[] right, double[] point) {
		double value = 0;
		for (int row = 0; row < point.length; row++) {
			value -= right[row] * point[row];
			for (int column = 0; column < point.length; column++) {
				value += 0.5 * point[row] * matrix[row][column] * point[column];
			}
		}
		return value;
	}
}
