package padwright.engine.rim;

import java.util.List;

/**
 * The least-squares reference circle of points around a rim or cup, by which its roundness is told (term of ISO 12181-1):
 * the sum of the squared distances of the points from it is least. Found by Gauss-Newton steps from the algebraic fit.
 *
 * @param x of the centre, in the unit of the points
 * @param y of the centre, in the unit of the points
 * @param radius above 0, in the unit of the points
 */
public record ReferenceCircle(double x, double y, double radius) {

	private static final int MOST_STEPS = 200;
	private static final double CLOSE_ENOUGH = 1e-14;

	/** A point in any unit of length. */
	public record Point(double x, double y) {
	}

	/**
	 * The circle through points in any order.
	 *
	 * @throws IllegalArgumentException if there are fewer than three, or they lie on a line
	 */
	public static ReferenceCircle of(List<Point> points) {
		if (points.size() < 3) {
			throw new IllegalArgumentException("a circle needs three points, not " + points.size());
		}
		Point centre = algebraicCentre(points);
		for (int step = 0; step < MOST_STEPS; step++) {
			Point next = closer(centre, points);
			double moved = distance(centre, next);
			centre = next;
			if (moved <= CLOSE_ENOUGH * meanDistance(centre, points)) {
				break;
			}
		}
		return new ReferenceCircle(centre.x, centre.y, meanDistance(centre, points));
	}

	/** How far a point lies outside the circle; below 0 inside. */
	public double deviation(Point point) {
		return distance(new Point(x, y), point) - radius;
	}

	/** The roundness deviation: the widest of the points outside less the deepest inside. */
	public double roundness(List<Point> points) {
		return points.stream().mapToDouble(this::deviation).max().orElse(0)
				- points.stream().mapToDouble(this::deviation).min().orElse(0);
	}

	/** Of the circle with the least sum of squares of x² + y² + ax + by + c: near, and solved in one step. */
	private static Point algebraicCentre(List<Point> points) {
		double middleX = points.stream().mapToDouble(Point::x).average().orElseThrow();
		double middleY = points.stream().mapToDouble(Point::y).average().orElseThrow();
		NormalEquations centre = new NormalEquations();
		double squares = 0;
		for (Point point : points) {
			double fromX = point.x - middleX;
			double fromY = point.y - middleY;
			double square = fromX * fromX + fromY * fromY;
			centre.add(fromX, fromY, square / 2);
			squares += square;
		}
		if (!(centre.determinant() > CLOSE_ENOUGH * squares * squares)) {
			throw new IllegalArgumentException("the points lie on a line, and so on no circle");
		}
		return new Point(middleX + centre.first(), middleY + centre.second());
	}

	/** One step: each point pulls the centre along its own direction, the radius being the mean distance. */
	private static Point closer(Point centre, List<Point> points) {
		double meanX = points.stream().mapToDouble(point -> (point.x - centre.x) / distance(centre, point)).average()
				.orElseThrow();
		double meanY = points.stream().mapToDouble(point -> (point.y - centre.y) / distance(centre, point)).average()
				.orElseThrow();
		double meanDistance = meanDistance(centre, points);
		NormalEquations step = new NormalEquations();
		for (Point point : points) {
			double distance = distance(centre, point);
			step.add((point.x - centre.x) / distance - meanX, (point.y - centre.y) / distance - meanY,
					distance - meanDistance);
		}
		return new Point(centre.x + step.first(), centre.y + step.second());
	}

	private static double meanDistance(Point centre, List<Point> points) {
		return points.stream().mapToDouble(point -> distance(centre, point)).average().orElseThrow();
	}

	private static double distance(Point from, Point to) {
		return StrictMath.hypot(to.x - from.x, to.y - from.y);
	}

	/** Two unknowns by least squares. */
	private static final class NormalEquations {

		private double xx;
		private double xy;
		private double yy;
		private double xr;
		private double yr;

		void add(double x, double y, double result) {
			xx += x * x;
			xy += x * y;
			yy += y * y;
			xr += x * result;
			yr += y * result;
		}

		double determinant() {
			return xx * yy - xy * xy;
		}

		double first() {
			return (xr * yy - yr * xy) / determinant();
		}

		double second() {
			return (yr * xx - xr * xy) / determinant();
		}
	}
}
