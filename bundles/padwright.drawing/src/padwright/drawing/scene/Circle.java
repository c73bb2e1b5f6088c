package padwright.drawing.scene;

/** A circle, in mm. */
public record Circle(double x, double y, double radius) implements Geometry {

	/** @throws IllegalArgumentException if the radius is not positive */
	public Circle {
		if (!(radius > 0)) {
			throw new IllegalArgumentException("a circle cannot have a radius of " + radius + " mm");
		}
	}

	@Override
	public void trace(PathSink sink) {
		ArcTracer arc = new ArcTracer(x, y);
		sink.moveTo(arc.x(radius, 0), arc.y(radius, 0));
		arc.trace(sink, radius, 0, 2 * Math.PI);
		sink.close();
	}
}
