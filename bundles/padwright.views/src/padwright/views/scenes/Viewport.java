package padwright.views.scenes;

import padwright.drawing.scene.Bounds;
import padwright.drawing.scene.Scene;

/**
 * Which part of a drawing a window shows, and how large.
 *
 * @param scale points of the window for 1 mm of the drawing, more than 0
 * @param left x in the window of the drawing's left edge
 * @param top y in the window of its upper edge
 */
public record Viewport(double scale, double left, double top) {

	/** Less cannot be told apart, more shows less than a tenth of a millimetre. */
	private static final double LEAST = 0.2;
	private static final double MOST = 400;

	/** @throws IllegalArgumentException if the scale is not positive */
	public Viewport {
		if (!(scale > 0)) {
			throw new IllegalArgumentException("a drawing cannot be shown at a scale of " + scale);
		}
	}

	/** The whole drawing in the middle of a window, as large as it goes. */
	public static Viewport whole(Scene scene, double width, double height) {
		double scale = clamped(Math.min(width / scene.width(), height / scene.height()));
		return new Viewport(scale, (width - scene.width() * scale) / 2, (height - scene.height() * scale) / 2);
	}

	/** Enlarged by {@code factor}, with what is at {@code (x, y)} of the window staying there. */
	public Viewport zoomed(double factor, double x, double y) {
		double next = clamped(scale * factor);
		return new Viewport(next, x - (x - left) * next / scale, y - (y - top) * next / scale);
	}

	private static double clamped(double scale) {
		return Math.max(LEAST, Math.min(MOST, scale));
	}

	public Viewport moved(double dx, double dy) {
		return new Viewport(scale, left + dx, top + dy);
	}

	/** Moved as little as brings {@code target} of the drawing into a window, its upper left if it is too large. */
	public Viewport showing(Bounds target, double width, double height) {
		return moved(shift(windowX(target.left()), windowX(target.right()), width),
				shift(windowY(target.top()), windowY(target.bottom()), height));
	}

	private static double shift(double from, double to, double size) {
		return from < 0 ? -from : Math.max(-from, Math.min(0, size - to));
	}

	/** Millimetres of the drawing at an x of the window. */
	public double sceneX(double x) {
		return (x - left) / scale;
	}

	public double sceneY(double y) {
		return (y - top) / scale;
	}

	public double windowX(double mm) {
		return left + mm * scale;
	}

	public double windowY(double mm) {
		return top + mm * scale;
	}
}
