package padwright.drawing.clock;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.stream.IntStream;

import padwright.drawing.scene.Bounds;
import padwright.drawing.scene.Drawn;
import padwright.drawing.scene.Element;
import padwright.drawing.scene.FontMetrics;
import padwright.drawing.scene.Group;
import padwright.drawing.scene.Ink;
import padwright.drawing.scene.RingSector;
import padwright.drawing.scene.SolidFill;
import padwright.drawing.scene.Stroke;
import padwright.drawing.scene.Style;
import padwright.engine.clock.Arc;
import padwright.engine.film.PartialShim;

/** The film inside the rim, beside one another where pieces lie over one another. */
final class PieceRings {

	private static final double THICKEST = 3.4;

	private final ClockFace face;
	private final FontMetrics metrics;
	private final DialWords words;
	private final int earlierPieces;
	private final List<PartialShim> all;
	private final List<Integer> layers;
	private final double thickness;
	private final PieceLabel[] labels;

	PieceRings(ClockFace face, FontMetrics metrics, DialWords words, List<PartialShim> earlier, List<PartialShim> pieces) {
		this.face = face;
		this.metrics = metrics;
		this.words = words;
		this.earlierPieces = earlier.size();
		this.all = new ArrayList<>(earlier);
		all.addAll(pieces);
		this.layers = Layers.of(all.stream().map(PartialShim::arc).toList());
		int stacked = layers.stream().mapToInt(layer -> layer + 1).max().orElse(1);
		this.thickness = Math.min(THICKEST, (ClockFace.FILM_OUTER - ClockFace.FILM_INNER) / stacked);
		this.labels = new PieceLabel[all.size()];
		IntStream.range(0, labels.length).boxed()
				.sorted(Comparator.comparing(index -> all.get(index).arc().halfHours()))
				.forEach(index -> labels[index] = label(index));
	}

	/** Short pieces choose first: a long one has more places for its label. */
	private PieceLabel label(int index) {
		List<Bounds> taken = Arrays.stream(labels).filter(Objects::nonNull).map(PieceLabel::plate).toList();
		return PieceLabel.place(face, metrics, words, all.get(index), outer(index) - thickness / 2, thickness, taken);
	}

	private double outer(int index) {
		return ClockFace.FILM_OUTER - layers.get(index) * thickness;
	}

	List<Element> draw() {
		List<Element> elements = new ArrayList<>();
		for (int i = 0; i < all.size(); i++) {
			elements.add(piece(i));
		}
		return elements;
	}

	private Element piece(int index) {
		PartialShim piece = all.get(index);
		boolean earlier = index < earlierPieces;
		double outer = outer(index);
		Arc arc = piece.arc();
		RingSector sector = new RingSector(0, 0, face.mm(outer - thickness), face.mm(outer), face.angle(arc.from()),
				arc.halfHours() * Math.PI / 12);
		List<Element> elements = new ArrayList<>();
		elements.add(new Drawn(sector, earlier ? inCup() : toPlace(piece)));
		elements.addAll(labels[index].draw());
		return Group.named((earlier ? "earlier-" : "piece-") + index, words.meanings().piece(piece, earlier), elements);
	}

	private Style toPlace(PartialShim piece) {
		return Style.of(FilmHatch.of(piece.thickness()).fill(face.mm(1)), Stroke.of(Ink.BLACK, face.mm(0.3)));
	}

	private Style inCup() {
		Stroke dashed = Stroke.of(Ink.BLACK, face.mm(0.22)).dashed(face.mm(0.7), face.mm(0.5));
		return Style.of(new SolidFill(Ink.WHITE), dashed);
	}
}
