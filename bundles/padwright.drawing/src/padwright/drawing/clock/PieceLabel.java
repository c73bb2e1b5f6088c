package padwright.drawing.clock;

import java.util.List;

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

/** The thickness of a piece on a white plate. */
record PieceLabel(String text, double size, Bounds plate) {

	private static final double LARGEST = 2.1;
	private static final double SMALLEST = 1.5;
	private static final double MARGIN = 0.18;
	private static final double GAP = 0.5;
	/** Where along the piece, best first. */
	private static final List<Double> PLACES = List.of(0.5, 0.33, 0.67, 0.2, 0.8);

	/** The label of a piece whose middle is {@code radius} units out, clear of the plates of others if it can be. */
	static PieceLabel place(ClockFace face, FontMetrics metrics, DialWords words, PartialShim piece, double radius, double thickness,
			List<Bounds> others) {
		String text = words.meanings().thickness(piece);
		double widthPerSize = metrics.width(text, Face.CONDENSED_BOLD, 1);
		double along = radius * piece.arc().halfHours() * Math.PI / 12 * 0.8;
		List<PieceLabel> choices = PLACES.stream().map(place -> {
			double angle = face.angle(piece.arc().from().station() + place * piece.arc().halfHours());
			double across = 2 * reach(angle, widthPerSize, FontMetrics.CAPITAL_HEIGHT);
			double size = Math.max(SMALLEST,
					Math.min(LARGEST, Math.min(along / widthPerSize, thickness / across * 0.95)));
			return new PieceLabel(text, face.mm(size), plate(face, angle, radius, size * widthPerSize + 2 * MARGIN,
					size * FontMetrics.CAPITAL_HEIGHT + 2 * MARGIN));
		}).toList();
		return choices.stream().filter(choice -> choice.isClearOf(others, face.mm(GAP))).findFirst()
				.orElse(choices.get(0));
	}

	private boolean isClearOf(List<Bounds> others, double gap) {
		return others.stream().noneMatch(plate.grown(gap)::overlaps);
	}

	/** How far an upright rectangle reaches from its middle toward the rim. */
	private static double reach(double angle, double width, double height) {
		return (Math.abs(StrictMath.sin(angle)) * width + Math.abs(StrictMath.cos(angle)) * height) / 2;
	}

	/** A plate of this size in units, drawn in from the rim as far as it would touch it. */
	private static Bounds plate(ClockFace face, double angle, double radius, double width, double height) {
		double clear = Math.min(radius, ClockFace.FILM_OUTER - reach(angle, width, height));
		return new Bounds(face.x(clear, angle) - face.mm(width) / 2, face.y(clear, angle) - face.mm(height) / 2,
				face.mm(width), face.mm(height));
	}

	List<Element> draw() {
		return List.of(
				new Drawn(new Rectangle(plate.left(), plate.top(), plate.width(), plate.height()),
						Style.filled(Ink.WHITE)),
				Text.centred(text, plate.centreX(), plate.centreY(), Face.CONDENSED_BOLD, size));
	}
}
