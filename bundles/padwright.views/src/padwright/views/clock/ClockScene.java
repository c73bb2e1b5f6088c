package padwright.views.clock;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import padwright.drawing.clock.ClockFace;
import padwright.drawing.clock.DialWords;
import padwright.drawing.clock.RimClock;
import padwright.drawing.clock.RimReading;
import padwright.drawing.font.DejaVuMetrics;
import padwright.drawing.scene.Bounds;
import padwright.drawing.scene.Circle;
import padwright.drawing.scene.Drawn;
import padwright.drawing.scene.Element;
import padwright.drawing.scene.Face;
import padwright.drawing.scene.Group;
import padwright.drawing.scene.Ink;
import padwright.drawing.scene.Rectangle;
import padwright.drawing.scene.RingSector;
import padwright.drawing.scene.Scene;
import padwright.drawing.scene.SolidFill;
import padwright.drawing.scene.Stroke;
import padwright.drawing.scene.Style;
import padwright.drawing.scene.Text;
import padwright.engine.clock.ClockHour;
import padwright.engine.evidence.GapBand;
import padwright.engine.film.PartialShim;
import padwright.engine.length.Length;
import padwright.paper.words.ClockMeanings;
import padwright.views.Messages;
import padwright.views.Palette;
import padwright.views.Shown;
import padwright.views.scenes.Extent;
import padwright.views.scenes.Targets;
import padwright.workup.solve.PadGap;
import padwright.workup.words.PieceWords;

/** The clock of a pad, with the reading that is being typed, handles at the chosen piece, and a proposal. */
final class ClockScene {

	static final double DIAMETER = 26;
	private static final double MARGIN = 0.8;
	private static final double HANDLE = 0.62;
	/** The middle of the dial, in both directions. */
	private static final double MIDDLE = DIAMETER / 2 + MARGIN;
	/** The band shows gaps up to this many thou, or up to the widest where that is more. */
	private static final double LEAST_FULL_GAP = 1.5;

	private final ClockPicture picture;
	private final Palette palette;

	private ClockScene(ClockPicture picture, Palette palette) {
		this.picture = picture;
		this.palette = palette;
	}

	private static ClockFace face() {
		return new ClockFace(DIAMETER, Shown.top());
	}

	/** The hour under a point of the drawing. */
	static ClockHour hourAt(double x, double y) {
		return face().hourAt(x - MIDDLE, y - MIDDLE);
	}

	/** The drawing, with its words beside the dial, or below it in a narrow window. */
	static Scene draw(ClockPicture picture, Palette palette, double aspect) {
		ClockScene clock = new ClockScene(picture, palette);
		if (picture.state().job().isEmpty()) {
			return new Scene("", 26 * aspect, 26,
					List.of(Text.centred(Messages.of("choose.key"), 13 * aspect, 13, Face.REGULAR, 1.1)
							.in(palette.quiet())));
		}
		List<Element> elements = new ArrayList<>();
		elements.add(Group.of(clock.dial()).at(MIDDLE, MIDDLE));
		Group words = Group.of(new ClockSummary(picture, palette).draw());
		Bounds room = Extent.of(List.of(words)).orElseThrow();
		double side = 2 * MIDDLE;
		double wide = side + room.width() + 3 * MARGIN;
		boolean beside = Math.max(wide / aspect, side) < Math.max(side / aspect, side + room.height() + 2 * MARGIN);
		elements.add(words.at((beside ? side + 2 * MARGIN : MARGIN) - room.left(),
				(beside ? 2 * MARGIN : side + MARGIN) - room.top()));
		double height = beside ? Math.max(side, room.height() + 4 * MARGIN) : side + room.height() + 2 * MARGIN;
		return new Scene(Messages.of("clock.title", picture.state().label()),
				beside ? wide : Math.max(side, room.width() + 2 * MARGIN), height, elements);
	}

	private List<Element> dial() {
		List<PartialShim> pieces = picture.proposal().map(ClockProposal::pieces).orElse(picture.pieces());
		Optional<GapBand> gap = picture.isFitted() ? picture.state().felt().map(PadGap::band) : Optional.empty();
		RimClock clock = new RimClock(words(), Shown.top(),
				marks(), gap, earlier(), pieces, fullGap(gap));
		Group dial = clock.draw(DIAMETER, new DejaVuMetrics());
		List<Element> elements = new ArrayList<>();
		elements.addAll(cursor(dial));
		elements.add(dial);
		boolean proposed = picture.proposal().isPresent();
		Optional<GapBand> left = proposed ? picture.proposal().flatMap(ClockProposal::left)
				: gap.flatMap(felt -> picture.state().left(pieces)).map(PadGap::band);
		left.ifPresent(after -> elements.add(clock.drawPredicted(after, DIAMETER,
				proposed ? palette.proposal() : palette.done())));
		if (proposed) {
			pieces.forEach(piece -> elements.add(band(piece, palette.proposal())));
		} else {
			picture.selected().filter(index -> index < pieces.size())
					.ifPresent(index -> elements.addAll(chosen(index, pieces.get(index))));
		}
		return elements;
	}

	private DialWords words() {
		String twelve = Messages.of("clock.at." + picture.state().twelveLooksAt());
		return new DialWords(Shown.top().equals(ClockHour.ofHour(12)) ? Messages.of("clock.reference", twelve)
				: Messages.of("clock.turned", twelve, Shown.top()), Messages.of("clock.side"), new ClockMeanings());
	}

	/** Without the pieces that a proposal takes out. */
	private List<PartialShim> earlier() {
		List<PartialShim> earlier = new ArrayList<>(picture.earlier());
		picture.proposal().ifPresent(proposal -> proposal.takeOut().forEach(earlier::remove));
		return earlier;
	}

	private static double fullGap(Optional<GapBand> gap) {
		double widest = gap.map(felt -> new Length(felt.high().stream().max().getAsLong()).inThou()).orElse(0.0);
		return Math.max(LEAST_FULL_GAP, widest);
	}

	/** The readings, with what is typed at the hour where it goes. */
	private List<RimReading> marks() {
		List<RimReading> marks = new ArrayList<>(picture.state().marks(picture.readings()));
		int cursor = picture.entry().cursor();
		if (cursor < marks.size() && !picture.entry().typed().isEmpty()) {
			marks.set(cursor, RimReading.free(marks.get(cursor).at(), picture.entry().typed()));
		}
		return marks;
	}

	/** A box around the hour whose reading comes next, with what is typed of it; doubtful readings are underlaid. */
	private List<Element> cursor(Group dial) {
		List<Element> elements = new ArrayList<>();
		Targets targets = Targets.of(new Scene("", DIAMETER, DIAMETER, List.of(dial)));
		for (ClockHour hour : picture.state().doubtful()) {
			targets.named("reading-" + hour).ifPresent(target -> elements
					.add(new Drawn(new Circle(target.bounds().centreX(), target.bounds().centreY(), 1.9),
							Style.filled(palette.tint(palette.warning(), 0.35)))));
		}
		List<ClockHour> hours = picture.state().hours();
		if (picture.entry().cursor() < hours.size()) {
			ClockHour hour = hours.get(picture.entry().cursor());
			targets.named("reading-" + hour).ifPresent(target -> elements.addAll(entry(target.bounds())));
		}
		return elements;
	}

	private List<Element> entry(Bounds mark) {
		double width = 4.2;
		double height = 2.7;
		Rectangle box = new Rectangle(mark.centreX() - width / 2, mark.centreY() - height / 2, width, height);
		return List.of(new Drawn(box, Style.of(new SolidFill(palette.tint(palette.accent(), 0.2)),
				Stroke.of(palette.accent(), 0.3))));
	}

	private static Element band(PartialShim piece, Ink ink) {
		return new Drawn(new RingSector(0, 0, face().mm(ClockFace.FILM_OUTER - 0.1), face().mm(ClockFace.RIM - 0.05),
				face().angle(piece.arc().from()), piece.arc().halfHours() * Math.PI / 12), Style.filled(ink));
	}

	private List<Element> chosen(int index, PartialShim piece) {
		return List.of(band(piece, palette.accent()),
				handle("from-" + index, "clock.from", piece, piece.arc().from()),
				handle("to-" + index, "clock.to", piece, piece.arc().to()));
	}

	private Element handle(String id, String message, PartialShim piece, ClockHour hour) {
		double angle = face().angle(hour);
		Circle knob = new Circle(face().x(ClockFace.RIM, angle), face().y(ClockFace.RIM, angle), HANDLE);
		return Group.named(id, Messages.of(message, PieceWords.of(piece)), List.of(new Drawn(knob,
				Style.of(new SolidFill(palette.accent()), Stroke.of(palette.ground(), 0.22)))));
	}
}
