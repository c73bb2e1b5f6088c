package padwright.drawing.scene;

/** A straight line between two points, in mm. */
public record Line(double x1, double y1, double x2, double y2) implements Geometry {

	@Override
	public void trace(PathSink sink) {
		sink.moveTo(x1, y1);
		sink.lineTo(x2, y2);
	}
}
