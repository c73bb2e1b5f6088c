package padwright.drawing.java2d;

import java.awt.geom.Path2D;

import padwright.drawing.scene.Geometry;
import padwright.drawing.scene.PathSink;

/** Outlines as Java2D paths. */
final class Outlines implements PathSink {

	private final Path2D.Double path = new Path2D.Double(Path2D.WIND_EVEN_ODD);

	private Outlines() {
	}

	static Path2D of(Geometry geometry) {
		Outlines sink = new Outlines();
		geometry.trace(sink);
		return sink.path;
	}

	@Override
	public void moveTo(double x, double y) {
		path.moveTo(x, y);
	}

	@Override
	public void lineTo(double x, double y) {
		path.lineTo(x, y);
	}

	@Override
	public void curveTo(double x1, double y1, double x2, double y2, double x, double y) {
		path.curveTo(x1, y1, x2, y2, x, y);
	}

	@Override
	public void close() {
		path.closePath();
	}
}
