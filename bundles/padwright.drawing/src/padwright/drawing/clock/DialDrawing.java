package padwright.drawing.clock;

import java.util.ArrayList;
import java.util.List;

import padwright.drawing.scene.Circle;
import padwright.drawing.scene.Drawn;
import padwright.drawing.scene.Element;
import padwright.drawing.scene.Face;
import padwright.drawing.scene.FontMetrics;
import padwright.drawing.scene.Ink;
import padwright.drawing.scene.Line;
import padwright.drawing.scene.Style;
import padwright.drawing.scene.Text;

/** The rim, its hours and what 12 o'clock looks at. */
record DialDrawing(ClockFace face, FontMetrics metrics, DialWords words) {

	private static final double WORD_SIZE = 1.65;
	private static final double WIDEST = 22;

	List<Element> draw() {
		List<Element> elements = new ArrayList<>();
		for (int hour = 0; hour < 12; hour++) {
			elements.add(tick(hour));
		}
		elements.add(new Drawn(new Circle(0, 0, face.mm(ClockFace.RIM)), Style.stroked(Ink.BLACK, face.mm(0.42))));
		elements.add(word(words.above(), -ClockFace.WORDS));
		elements.add(word(words.below(), ClockFace.WORDS));
		return elements;
	}

	private Element tick(int hour) {
		boolean quarter = hour % 3 == 0;
		double angle = face.angle(2.0 * hour);
		double out = ClockFace.RIM + (quarter ? 1.1 : 0.6);
		return new Drawn(
				new Line(face.x(ClockFace.RIM, angle), face.y(ClockFace.RIM, angle), face.x(out, angle),
						face.y(out, angle)),
				Style.stroked(Ink.BLACK, face.mm(quarter ? 0.34 : 0.2)));
	}

	private Element word(String text, double y) {
		double size = Math.min(WORD_SIZE, WIDEST / metrics.width(text, Face.CONDENSED, 1));
		return Text.centred(text, 0, face.mm(y), Face.CONDENSED, face.mm(size));
	}
}
