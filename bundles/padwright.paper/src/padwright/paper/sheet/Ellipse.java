package padwright.paper.sheet;

import padwright.drawing.scene.Path;

/** Ellipses and halves of circles as curves, off by under 0.03 %. */
final class Ellipse {

	/** Where a quarter is drawn as one curve, the length of its handles. */
	static final double HANDLE = 0.5523;

	private Ellipse() {
	}

	/** @param across half of its width, mm; {@code along} half of its height */
	static Path about(double x, double y, double across, double along) {
		Path.Recorder outline = new Path.Recorder();
		outline.moveTo(x + across, y);
		lowerHalf(outline, x, y, across, along);
		lowerHalf(outline, x, y, -across, -along);
		outline.close();
		return outline.path();
	}

	/** The part below the middle. */
	static Path lowerHalf(double x, double y, double radius) {
		Path.Recorder outline = new Path.Recorder();
		outline.moveTo(x + radius, y);
		lowerHalf(outline, x, y, radius, radius);
		outline.close();
		return outline.path();
	}

	/** From the right through below to the left; with both negative from the left through above to the right. */
	private static void lowerHalf(Path.Recorder outline, double x, double y, double across, double along) {
		outline.curveTo(x + across, y + along * HANDLE, x + across * HANDLE, y + along, x, y + along);
		outline.curveTo(x - across * HANDLE, y + along, x - across, y + along * HANDLE, x - across, y);
	}
}
