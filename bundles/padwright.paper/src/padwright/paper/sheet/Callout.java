package padwright.paper.sheet;

import java.util.ArrayList;
import java.util.List;

import padwright.drawing.font.DejaVuMetrics;
import padwright.drawing.layout.Lanes;
import padwright.drawing.scene.Drawn;
import padwright.drawing.scene.Element;
import padwright.drawing.scene.Face;
import padwright.drawing.scene.Ink;
import padwright.drawing.scene.Line;
import padwright.drawing.scene.Style;
import padwright.paper.page.Typesetter;

/**
 * What is told of a round thing on a map, beside the map.
 *
 * @param x of its right edge
 * @param y of its middle
 * @param isBold whether it is pressed by a finger
 */
record Callout(double x, double y, String text, boolean isBold) {

	private static final double SIZE = 2.9;
	private static final double APART = SIZE * 1.25;
	private static final double BEND = 5;
	private static final double NARROWEST = 27;
	private static final double WIDEST = 50;

	/** Room for all texts, mm. */
	static double width(List<Callout> callouts) {
		DejaVuMetrics metrics = new DejaVuMetrics();
		return Math.min(WIDEST, callouts.stream().mapToDouble(each -> metrics.width(each.text(), each.face(), SIZE) + 1)
				.reduce(NARROWEST, Math::max));
	}

	/** Where the lowest text ends, from the order of their places down; zero without any. */
	static double end(List<Callout> callouts) {
		List<Double> places = places(callouts);
		return places.isEmpty() ? 0 : places.get(places.size() - 1) + SIZE;
	}

	/** Each with a line to its text, all texts from the same left edge. */
	static List<Element> draw(List<Callout> callouts, double left, Typesetter typesetter) {
		List<Element> elements = new ArrayList<>();
		List<Double> places = places(callouts);
		double width = width(callouts);
		for (int index = 0; index < callouts.size(); index++) {
			Callout each = callouts.get(index);
			double y = places.get(index);
			elements.add(line(each.x(), each.y(), left - BEND, each.y()));
			elements.add(line(left - BEND, each.y(), left - 0.6, y));
			elements.add(typesetter.line(each.text(), left, y + SIZE * 0.36, each.face(), SIZE, width));
		}
		return elements;
	}

	private Face face() {
		return isBold ? Face.CONDENSED_BOLD : Face.CONDENSED;
	}

	private static List<Double> places(List<Callout> callouts) {
		return Lanes.spread(callouts.stream().map(Callout::y).toList(), APART);
	}

	private static Element line(double x1, double y1, double x2, double y2) {
		return new Drawn(new Line(x1, y1, x2, y2), Style.stroked(Ink.BLACK, 0.1));
	}
}
