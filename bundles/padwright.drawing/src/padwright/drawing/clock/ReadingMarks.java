package padwright.drawing.clock;

import java.util.List;

import padwright.drawing.scene.Circle;
import padwright.drawing.scene.Drawn;
import padwright.drawing.scene.Element;
import padwright.drawing.scene.Face;
import padwright.drawing.scene.FontMetrics;
import padwright.drawing.scene.Group;
import padwright.drawing.scene.Ink;
import padwright.drawing.scene.Rectangle;
import padwright.drawing.scene.Style;
import padwright.drawing.scene.Text;

/** The readings at their hours: a dot where the finest leaf drags, else the leaf that slides free. */
record ReadingMarks(ClockFace face, FontMetrics metrics, DialWords words, List<RimReading> readings) {

	private static final double SIZE = 2.7;
	private static final double WIDEST = 3.9;
	/** Middle of the figures above and below the rim; beside it they stand further out, being wider than high. */
	private static final double RADIUS = 10.05;
	private static final double FURTHER_BESIDE = 0.95;
	private static final double DOT = 0.8;

	List<Element> draw() {
		return readings.stream().map(this::mark).toList();
	}

	private Element mark(RimReading reading) {
		double angle = face.angle(reading.at());
		double radius = RADIUS + FURTHER_BESIDE * Math.abs(StrictMath.sin(angle));
		double x = face.x(radius, angle);
		double y = face.y(radius, angle);
		return Group.named("reading-" + reading.at(), words.meanings().reading(reading),
				List.of(shape(reading, x, y)));
	}

	private Element shape(RimReading reading, double x, double y) {
		if (reading.drags()) {
			return dot(x, y);
		}
		return reading.text().isEmpty() ? box(x, y) : figure(reading.text(), x, y);
	}

	private Element box(double x, double y) {
		double width = face.mm(WIDEST * 0.85);
		double height = face.mm(SIZE * 0.85);
		return new Drawn(new Rectangle(x - width / 2, y - height / 2, width, height),
				Style.stroked(Ink.grey(110), face.mm(0.16)));
	}

	private Element dot(double x, double y) {
		return new Drawn(new Circle(x, y, face.mm(DOT)), Style.filled(Ink.BLACK));
	}

	private Element figure(String text, double x, double y) {
		double width = metrics.width(text, Face.CONDENSED_BOLD, SIZE);
		double size = face.mm(SIZE * Math.min(1, WIDEST / width));
		return Text.centred(text, x, y, Face.CONDENSED_BOLD, size);
	}
}
