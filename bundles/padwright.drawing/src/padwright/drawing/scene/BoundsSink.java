package padwright.drawing.scene;

/** Gathers the rectangle around all control points. */
final class BoundsSink implements PathSink {

	private double left = Double.POSITIVE_INFINITY;
	private double top = Double.POSITIVE_INFINITY;
	private double right = Double.NEGATIVE_INFINITY;
	private double bottom = Double.NEGATIVE_INFINITY;

	@Override
	public void moveTo(double x, double y) {
		left = Math.min(left, x);
		top = Math.min(top, y);
		right = Math.max(right, x);
		bottom = Math.max(bottom, y);
	}

	@Override
	public void lineTo(double x, double y) {
		moveTo(x, y);
	}

	@Override
	public void curveTo(double x1, double y1, double x2, double y2, double x, double y) {
		moveTo(x1, y1);
		moveTo(x2, y2);
		moveTo(x, y);
	}

	@Override
	public void close() {
		// a closing line stays within what was gathered
	}

	Bounds bounds() {
		return new Bounds(left, top, right - left, bottom - top);
	}
}
