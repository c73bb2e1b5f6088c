package padwright.drawing.scene;

/** An outline in mm, x to the right, y down. */
public sealed interface Geometry permits Line, Rectangle, Circle, RingSector, Path {

	/** Draws the outline into {@code sink} as straight lines and cubic curves. */
	void trace(PathSink sink);

	/** A rectangle that holds the outline (the control points of its curves). */
	default Bounds bounds() {
		BoundsSink sink = new BoundsSink();
		trace(sink);
		return sink.bounds();
	}
}
