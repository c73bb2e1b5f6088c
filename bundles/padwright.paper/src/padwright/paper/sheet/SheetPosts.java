package padwright.paper.sheet;

import java.util.List;

import padwright.drawing.scene.Drawn;
import padwright.drawing.scene.Element;
import padwright.drawing.scene.Ink;
import padwright.drawing.scene.Line;
import padwright.drawing.scene.Rectangle;
import padwright.drawing.scene.Style;

/** Rods with a post at either end; mm on paper. */
final class SheetPosts {

	static final Ink NEAR = Ink.grey(90);
	private static final double ROD = 0.5;
	private static final double POST = 1.6;

	private SheetPosts() {
	}

	static List<Element> rod(double x1, double y1, double x2, double y2, Ink ink) {
		return List.of(new Drawn(new Line(x1, y1, x2, y2), Style.stroked(ink, ROD)), post(x1, y1, ink), post(x2, y2, ink));
	}

	private static Element post(double x, double y, Ink ink) {
		return new Drawn(new Rectangle(x - POST / 2, y - POST / 2, POST, POST), Style.filled(ink));
	}
}
