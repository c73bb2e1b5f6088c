package padwright.drawing.scene;

/**
 * An affine map: x' = xx·x + xy·y + dx, y' = yx·x + yy·y + dy; lengths in mm.
 */
public record Transform(double xx, double yx, double xy, double yy, double dx, double dy) {

	public static final Transform NONE = translation(0, 0);

	public static Transform translation(double dx, double dy) {
		return new Transform(1, 0, 0, 1, dx, dy);
	}

	/** Enlarges by {@code factor} about the origin, then moves. */
	public static Transform scaling(double factor, double dx, double dy) {
		return new Transform(factor, 0, 0, factor, dx, dy);
	}

	/** Turns clockwise about the origin. */
	public static Transform rotation(double degrees) {
		double angle = StrictMath.toRadians(degrees);
		double cosine = StrictMath.cos(angle);
		double sine = StrictMath.sin(angle);
		return new Transform(cosine, sine, -sine, cosine, 0, 0);
	}

	/** The map that does {@code first}, then this. */
	public Transform after(Transform first) {
		return new Transform(
				xx * first.xx + xy * first.yx, yx * first.xx + yy * first.yx,
				xx * first.xy + xy * first.yy, yx * first.xy + yy * first.yy,
				xOf(first.dx, first.dy), yOf(first.dx, first.dy));
	}

	public double xOf(double x, double y) {
		return xx * x + xy * y + dx;
	}

	public double yOf(double x, double y) {
		return yx * x + yy * y + dy;
	}
}
