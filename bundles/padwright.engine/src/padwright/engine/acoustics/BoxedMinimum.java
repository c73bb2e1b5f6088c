package padwright.engine.acoustics;

import java.util.Arrays;
import java.util.stream.IntStream;

import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.CholeskyDecomposition;
import org.hipparchus.linear.RealMatrix;

/**
 * The least ½ x·Ax − b·x with each x between its bounds, for a positive definite A: by the active-set method of P. B.
 * Stark and R. L. Parker, Bounded-variable least-squares, Computational Statistics 10 (1995) 129–141.
 */
final class BoxedMinimum {

	/** By how much of its diagonal a slope may point out of the box; far above rounding. */
	private static final double FLAT = 1e-9;

	/** For each variable; each round goes down, so that this is never met but by rounding. */
	private static final int MOST_ROUNDS = 100;

	private final double[][] matrix;
	private final double[] right;
	private final double[] least;
	private final double[] most;
	private final double[] point;
	private final boolean[] held;

	/** Starts at 0, which must lie between the bounds. */
	BoxedMinimum(double[][] matrix, double[] right, double[] least, double[] most) {
		this.matrix = matrix;
		this.right = right;
		this.least = least;
		this.most = most;
		point = new double[right.length];
		held = new boolean[right.length];
	}

	double[] find() {
		descend();
		int released = mostWanted();
		for (int round = 0; released >= 0 && round < MOST_ROUNDS * point.length; round++) {
			held[released] = false;
			descend();
			released = mostWanted();
		}
		return point;
	}

	/** To the least with those held that are, holding more where the way there meets a bound. */
	private void descend() {
		int[] free = IntStream.range(0, point.length).filter(index -> !held[index]).toArray();
		while (free.length > 0) {
			double[] target = leastOf(free);
			int blocking = -1;
			double share = 1;
			for (int index = 0; index < free.length; index++) {
				double way = target[index] - point[free[index]];
				double bound = way > 0 ? most[free[index]] : least[free[index]];
				double reach = way == 0 ? 1 : (bound - point[free[index]]) / way;
				if (reach < share) {
					share = reach;
					blocking = index;
				}
			}
			for (int index = 0; index < free.length; index++) {
				point[free[index]] += share * (target[index] - point[free[index]]);
			}
			if (blocking < 0) {
				return;
			}
			hold(free[blocking], target[blocking]);
			free = Arrays.stream(free).filter(index -> !held[index]).toArray();
		}
	}

	private void hold(int index, double beyond) {
		held[index] = true;
		point[index] = beyond > point[index] ? most[index] : least[index];
	}

	private double[] leastOf(int[] free) {
		RealMatrix part = new Array2DRowRealMatrix(matrix, false).getSubMatrix(free, free);
		double[] rest = Arrays.stream(free).mapToDouble(index -> right[index] - product(index, true)).toArray();
		return new CholeskyDecomposition(part).getSolver().solve(new ArrayRealVector(rest)).toArray();
	}

	/** The one held at a bound that most wants to leave it inwards, or -1. */
	private int mostWanted() {
		int wanted = -1;
		double strongest = FLAT;
		for (int index = 0; index < point.length; index++) {
			double slope = product(index, true) + product(index, false) - right[index];
			double inward = (point[index] == least[index] ? -slope : slope) / matrix[index][index];
			if (held[index] && inward > strongest) {
				strongest = inward;
				wanted = index;
			}
		}
		return wanted;
	}

	/** Of a row with the variables that are held, or with the others. */
	private double product(int row, boolean ofHeld) {
		return IntStream.range(0, point.length).filter(index -> held[index] == ofHeld)
				.mapToDouble(index -> matrix[row][index] * point[index]).sum();
	}
}
