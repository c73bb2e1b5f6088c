package padwright.engine.rim;

import java.util.ArrayList;
import java.util.List;

/**
 * The point nearest to the origin under constraints normal · point ≥ bound that arrive one by one: the state of the
 * dual active-set method. It is always the nearest point under the constraints it keeps; the others it knew do not
 * bind there.
 */
final class ActiveSet {

	/** A normal with less than this part outside the span of the kept ones depends on them. */
	private static final double DEPENDENT = 1e-11;

	private record Constraint(double[] normal, double bound) {
	}

	private final int size;
	private final List<Constraint> kept = new ArrayList<>();
	private double[] multipliers = new double[0];
	private double[] point;

	ActiveSet(int size) {
		this.size = size;
		point = new double[size];
	}

	double[] point() {
		return point;
	}

	/**
	 * Moves to the nearest point that obeys a violated constraint too.
	 *
	 * @throws IllegalStateException if none does
	 */
	void obey(double[] normal, double bound) {
		while (true) {
			OrthogonalColumns columns = columns();
			double[] outside = normal.clone();
			double[] slopes = columns.solve(columns.project(outside));
			double length = Vectors.dot(outside, outside);
			boolean dependent = length <= DEPENDENT * DEPENDENT * Vectors.dot(normal, normal);
			double full = dependent ? Double.POSITIVE_INFINITY : (bound - Vectors.dot(normal, point)) / length;
			int blocking = blocking(slopes, full);
			double step = blocking < 0 ? full : multipliers[blocking] / slopes[blocking];
			if (step == Double.POSITIVE_INFINITY) {
				throw new IllegalStateException("no profile lies within the bounds");
			}
			Vectors.add(multipliers, -step, slopes);
			if (blocking < 0) {
				keep(new Constraint(normal, bound));
				return;
			}
			if (!dependent) {
				Vectors.add(point, step, outside);
			}
			drop(blocking);
		}
	}

	/** The kept constraint whose multiplier reaches zero first, before a step of {@code full}; or -1. */
	private int blocking(double[] slopes, double full) {
		int blocking = -1;
		double least = full;
		for (int i = 0; i < slopes.length; i++) {
			if (slopes[i] > 0 && multipliers[i] / slopes[i] < least) {
				least = multipliers[i] / slopes[i];
				blocking = i;
			}
		}
		return blocking;
	}

	private void drop(int index) {
		kept.remove(index);
		double[] rest = new double[kept.size()];
		System.arraycopy(multipliers, 0, rest, 0, index);
		System.arraycopy(multipliers, index + 1, rest, index, rest.length - index);
		multipliers = rest;
	}

	/** Point and multipliers anew from the kept constraints alone, so that rounding errors do not add up. */
	private void keep(Constraint constraint) {
		kept.add(constraint);
		OrthogonalColumns columns = columns();
		double[] coordinates = columns.solveTransposed(kept.stream().mapToDouble(Constraint::bound).toArray());
		point = columns.combine(coordinates);
		multipliers = columns.solve(coordinates);
		for (int i = 0; i < multipliers.length; i++) {
			multipliers[i] = Math.max(multipliers[i], 0);
		}
	}

	private OrthogonalColumns columns() {
		OrthogonalColumns columns = new OrthogonalColumns(size);
		kept.forEach(constraint -> columns.add(constraint.normal()));
		return columns;
	}
}
