package padwright.engine.rim;

import java.util.List;

import padwright.engine.clock.ClockHour;
import padwright.engine.length.Length;

/**
 * The least-squares reference plane of measured heights (ISO 12781-1): z = height + slopeX · x + slopeY · y with the
 * smallest sum of squared distances in z. Works from hours at any distances, where a Fourier series needs even ones.
 *
 * @param height where the plane meets x = y = 0, in the unit of z
 * @param slopeX rise in z for one unit of x
 * @param slopeY rise in z for one unit of y
 */
public record ReferencePlane(double height, double slopeX, double slopeY) {

	/** Points count as lying on one line where the determinant falls below this part of its largest possible value. */
	private static final double ONE_LINE = 1e-12;

	/** A measured height at a place. */
	public record Point(double x, double y, double z) {

		/** A gap in nm at an hour, on a rim of radius 1: x toward 3 o'clock, y toward 12. */
		public static Point of(ClockHour hour, Length gap) {
			return new Point(StrictMath.sin(hour.angle()), StrictMath.cos(hour.angle()), gap.nanometres());
		}
	}

	/**
	 * The plane of these points.
	 *
	 * @throws IllegalArgumentException if there are fewer than three, or all lie on one line
	 */
	public static ReferencePlane of(List<Point> points) {
		if (points.size() < 3) {
			throw new IllegalArgumentException(points.size() + " points span no plane; three are needed");
		}
		return new Moments(points).plane();
	}

	/** How much wider the plane is on the far side of a rim of radius 1 than on the near one, in the unit of z. */
	public double fromTightToOpen() {
		return 2 * StrictMath.hypot(slopeX, slopeY);
	}

	/** The half hour toward which the plane rises most. */
	public ClockHour openHour() {
		double turn = StrictMath.atan2(slopeX, slopeY) / (2 * StrictMath.PI);
		return new ClockHour((int) Math.floorMod(Math.round(turn * ClockHour.STATIONS), (long) ClockHour.STATIONS));
	}

	/** Sums of products about the mean, which the normal equations are made of. */
	private static final class Moments {

		private final double meanX;
		private final double meanY;
		private final double meanZ;
		private double xx;
		private double xy;
		private double yy;
		private double xz;
		private double yz;

		Moments(List<Point> points) {
			meanX = points.stream().mapToDouble(Point::x).average().orElseThrow();
			meanY = points.stream().mapToDouble(Point::y).average().orElseThrow();
			meanZ = points.stream().mapToDouble(Point::z).average().orElseThrow();
			points.forEach(this::add);
		}

		private void add(Point point) {
			double x = point.x() - meanX;
			double y = point.y() - meanY;
			double z = point.z() - meanZ;
			xx += x * x;
			xy += x * y;
			yy += y * y;
			xz += x * z;
			yz += y * z;
		}

		ReferencePlane plane() {
			double determinant = xx * yy - xy * xy;
			if (determinant <= ONE_LINE * xx * yy) {
				throw new IllegalArgumentException("points on one line span no plane");
			}
			double slopeX = (xz * yy - yz * xy) / determinant;
			double slopeY = (yz * xx - xz * xy) / determinant;
			return new ReferencePlane(meanZ - slopeX * meanX - slopeY * meanY, slopeX, slopeY);
		}
	}
}
