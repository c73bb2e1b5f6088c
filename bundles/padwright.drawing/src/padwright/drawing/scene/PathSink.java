package padwright.drawing.scene;

/** Where an outline is traced to; coordinates in mm, x to the right, y down. */
public interface PathSink {

	void moveTo(double x, double y);

	void lineTo(double x, double y);

	/** A cubic Bézier curve to {@code (x, y)}. */
	void curveTo(double x1, double y1, double x2, double y2, double x, double y);

	void close();
}
