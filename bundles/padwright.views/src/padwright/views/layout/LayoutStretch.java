package padwright.views.layout;

import java.util.Optional;

import padwright.drawing.scene.Bounds;

/**
 * What the mouse draws out over a layout: a line from something, or a rectangle.
 *
 * @param from id of what it was drawn from; nothing for a rectangle
 * @param x mm of the drawing, as all others
 */
record LayoutStretch(Optional<String> from, double x, double y, double toX, double toY) {

	LayoutStretch to(double nextX, double nextY) {
		return new LayoutStretch(from, x, y, nextX, nextY);
	}

	Bounds bounds() {
		return new Bounds(Math.min(x, toX), Math.min(y, toY), Math.abs(toX - x), Math.abs(toY - y));
	}
}
