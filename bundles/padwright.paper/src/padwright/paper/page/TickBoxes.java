package padwright.paper.page;

import java.util.ArrayList;
import java.util.List;

import padwright.drawing.scene.Drawn;
import padwright.drawing.scene.Element;
import padwright.drawing.scene.Face;
import padwright.drawing.scene.FontMetrics;
import padwright.drawing.scene.Ink;
import padwright.drawing.scene.Rectangle;
import padwright.drawing.scene.Style;
import padwright.drawing.scene.Text;

/** Boxes to tick, each with its word. */
public final class TickBoxes {

	private static final double LINE = 0.35;

	private TickBoxes() {
	}

	public static Element box(double x, double top, double side) {
		return new Drawn(new Rectangle(x, top, side, side), Style.stroked(Ink.BLACK, LINE));
	}

	/** A row of boxes from {@code x} on; {@code size} of the words in mm. */
	public static List<Element> row(FontMetrics metrics, List<String> words, double x, double top, double side,
			double size) {
		List<Element> elements = new ArrayList<>();
		double left = x;
		for (String word : words) {
			elements.add(box(left, top, side));
			double textLeft = left + side + size * 0.35;
			elements.add(Text.of(word, textLeft, top + side / 2 + size * 0.33, Face.CONDENSED, size));
			left = textLeft + metrics.width(word, Face.CONDENSED, size) + size * 0.9;
		}
		return elements;
	}
}
