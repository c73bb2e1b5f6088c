package padwright.drawing.clock;

import java.util.List;

import padwright.drawing.scene.Anchor;
import padwright.drawing.scene.Bounds;
import padwright.drawing.scene.Drawn;
import padwright.drawing.scene.Element;
import padwright.drawing.scene.Face;
import padwright.drawing.scene.FontMetrics;
import padwright.drawing.scene.Ink;
import padwright.drawing.scene.Rectangle;
import padwright.drawing.scene.Style;
import padwright.drawing.scene.Text;
import padwright.engine.film.PartialShim;
import padwright.engine.length.LengthUnit;

/** The thickness of a piece in thou on a white plate. */
record PieceLabel(String text, double size, Bounds plate) {

	private static final double LARGEST = 2.1;
	private static final double SMALLEST = 1.4;
	private static final double CAPITAL = 0.73;
	private static final double MARGIN = 0.18;
	private static final double GAP = 0.5;
	/** Where along the piece, best first. */
	private static final List<Double> PLACES = List.of(0.5, 0.33, 0.67, 0.2, 0.8);

	/** The label of a piece whose middle is {@code radius} units out, clear of the plates of others if it can be. */
	static PieceLabel place(ClockFace face, FontMetrics metrics, PartialShim piece, double radius, double thickness,
			List<Bounds> others) {
		String text = piece.thickness().in(LengthUnit.THOU, 2).toPlainString();
		double along = radius * piece.arc().halfHours() * Math.PI / 12 * 0.8;
		double fitting = Math.min(along / metrics.width(text, Face.CONDENSED_BOLD, 1), thickness / CAPITAL * 0.8);
		double size = Math.max(SMALLEST, Math.min(LARGEST, fitting));
		double width = metrics.width(text, Face.CONDENSED_BOLD, size) + 2 * MARGIN;
		List<Bounds> choices = PLACES.stream().map(fraction -> piece.arc().from().station()
				+ fraction * piece.arc().halfHours())
				.map(station -> plate(face, face.angle(station), radius, width, size * CAPITAL + 2 * MARGIN)).toList();
		Bounds free = choices.stream().filter(choice -> others.stream().noneMatch(choice.grown(face.mm(GAP))::overlaps))
				.findFirst().orElse(choices.get(0));
		return new PieceLabel(text, face.mm(size), free);
	}

	/** A plate of this size in units, drawn in from the rim as far as it would touch it. */
	private static Bounds plate(ClockFace face, double angle, double radius, double width, double height) {
		double reach = Math.abs(StrictMath.sin(angle)) * width / 2 + Math.abs(StrictMath.cos(angle)) * height / 2;
		double clear = Math.min(radius, ClockFace.FILM_OUTER - reach);
		return new Bounds(face.x(clear, angle) - face.mm(width) / 2, face.y(clear, angle) - face.mm(height) / 2,
				face.mm(width), face.mm(height));
	}

	List<Element> draw() {
		return List.of(
				new Drawn(new Rectangle(plate.left(), plate.top(), plate.width(), plate.height()),
						Style.filled(Ink.WHITE)),
				Text.of(text, plate.centreX(), plate.centreY() + size * CAPITAL / 2, Face.CONDENSED_BOLD, size)
						.anchored(Anchor.MIDDLE));
	}
}
