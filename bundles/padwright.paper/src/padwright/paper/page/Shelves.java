package padwright.paper.page;

import java.util.ArrayList;
import java.util.List;

import padwright.drawing.scene.Bounds;

/**
 * Places boxes on shelves: side by side, in the order given, and on a new shelf below where the width is used up. Each
 * shelf is as high as its highest box. The same boxes give the same shelves.
 */
public final class Shelves {

	private Shelves() {
	}

	/**
	 * Where each box lies on its shelf; a shelf's own top is 0.
	 *
	 * @param boxes sizes in mm; their own place is not looked at
	 * @param width of a shelf, mm
	 * @param gap between boxes, mm
	 * @throws IllegalArgumentException if a box is wider than a shelf
	 */
	public static List<List<Bounds>> of(List<Bounds> boxes, double width, double gap) {
		List<List<Bounds>> shelves = new ArrayList<>();
		double left = Double.POSITIVE_INFINITY;
		for (Bounds box : boxes) {
			if (box.width() > width) {
				throw new IllegalArgumentException(
						"a box " + box.width() + " mm wide does not fit on a shelf of " + width + " mm");
			}
			if (left + box.width() > width) {
				shelves.add(new ArrayList<>());
				left = 0;
			}
			shelves.get(shelves.size() - 1).add(new Bounds(left, 0, box.width(), box.height()));
			left += box.width() + gap;
		}
		return shelves;
	}
}
