package padwright.paper.page;

import java.util.ArrayList;
import java.util.List;

import padwright.drawing.scene.Drawn;
import padwright.drawing.scene.Element;
import padwright.drawing.scene.Face;
import padwright.drawing.scene.Ink;
import padwright.drawing.scene.Line;
import padwright.drawing.scene.Style;
import padwright.drawing.scene.Text;

/** A line 50 mm long to lay a ruler on, for whoever must know that the printer kept the size. */
public final class Ruler {

	/** How long it is, mm. */
	public static final int LENGTH = 50;
	/** How much room it takes below its top, mm. */
	public static final double HEIGHT = 6;

	private static final double LINE = 0.2;
	private static final double BASE = 2.6;
	private static final double SIZE = 2.5;

	private Ruler() {
	}

	/** The ruler with its left end at {@code left}. */
	public static List<Element> draw(double left, double top) {
		List<Element> elements = new ArrayList<>();
		elements.add(line(left, top + BASE, left + LENGTH, top + BASE));
		for (int mm = 0; mm <= LENGTH; mm += 5) {
			double tick = mm % 10 == 0 ? BASE : BASE / 2;
			elements.add(line(left + mm, top + BASE - tick, left + mm, top + BASE));
		}
		elements.add(Text.of("0", left, top + BASE + SIZE, Face.CONDENSED, SIZE));
		elements.add(Text.of(LENGTH + " mm", left + LENGTH - SIZE / 2, top + BASE + SIZE, Face.CONDENSED, SIZE));
		return elements;
	}

	private static Element line(double x1, double y1, double x2, double y2) {
		return new Drawn(new Line(x1, y1, x2, y2), Style.stroked(Ink.BLACK, LINE));
	}
}
