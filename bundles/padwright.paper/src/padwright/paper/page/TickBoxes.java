package padwright.paper.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;

import padwright.drawing.scene.Drawn;
import padwright.drawing.scene.Element;
import padwright.drawing.scene.Face;
import padwright.drawing.scene.FontMetrics;
import padwright.drawing.scene.Ink;
import padwright.drawing.scene.Line;
import padwright.drawing.scene.Rectangle;
import padwright.drawing.scene.Style;
import padwright.drawing.scene.Text;

/** Boxes to tick, each with its word. */
public final class TickBoxes {

	private static final double LINE = 0.35;

	private TickBoxes() {
	}

	/** A box, with a tick in it for what is done. */
	public static List<Element> box(double x, double top, double side, boolean ticked) {
		List<Element> elements = new ArrayList<>();
		elements.add(new Drawn(new Rectangle(x, top, side, side), Style.stroked(Ink.BLACK, LINE)));
		if (ticked) {
			Style pen = Style.stroked(Ink.BLACK, 2 * LINE);
			elements.add(new Drawn(new Line(x + side * 0.2, top + side * 0.55, x + side * 0.42, top + side * 0.8), pen));
			elements.add(new Drawn(new Line(x + side * 0.42, top + side * 0.8, x + side * 0.85, top + side * 0.15), pen));
		}
		return elements;
	}

	/** A row of boxes from {@code x} on, by their words whether they are ticked; {@code size} of the words in mm. */
	public static List<Element> row(FontMetrics metrics, Map<String, Boolean> boxes, double x, double top, double side,
			double size) {
		List<Element> elements = new ArrayList<>();
		double left = x;
		for (Map.Entry<String, Boolean> box : boxes.entrySet()) {
			String word = box.getKey();
			elements.addAll(box(left, top, side, box.getValue()));
			double textLeft = left + side + size * 0.35;
			elements.add(Text.of(word, textLeft, top + side / 2 + size * 0.33, Face.CONDENSED, size));
			left = textLeft + metrics.width(word, Face.CONDENSED, size) + size * 0.9;
		}
		return elements;
	}
}
