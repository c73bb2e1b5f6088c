package padwright.views.sound;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

import padwright.drawing.scene.Circle;
import padwright.drawing.scene.Drawn;
import padwright.drawing.scene.Element;
import padwright.drawing.scene.Group;
import padwright.drawing.scene.Ink;
import padwright.drawing.scene.Line;
import padwright.drawing.scene.Rectangle;
import padwright.drawing.scene.SolidFill;
import padwright.drawing.scene.Stroke;
import padwright.drawing.scene.Style;
import padwright.views.Messages;
import padwright.views.Palette;
import padwright.workup.report.Figures;
import padwright.workup.sound.ToneSound;

/** By how many cents each note is off, and how it was before something was dragged. */
record CentsChart(SoundSession session, SoundFrame frame) {

	/** Names the mark of a note in the drawing. */
	static final String NOTE = "note:";

	private static final double[] RANGES = { 10, 20, 30, 50, 100, 200, 600 };
	private static final double IN_TUNE = 5;
	private static final double BAND = 0.14;
	private static final double RADIUS = 1.2;
	private static final double CHOSEN = 2.3;
	private static final double LINE = 0.35;
	private static final double FILL = 0.2;

	List<Element> draw() {
		Palette palette = frame.palette();
		double most = range();
		List<Element> elements = new ArrayList<>();
		double top = frame.y(IN_TUNE, -most, most);
		elements.add(new Drawn(new Rectangle(frame.left(), top, frame.width(), frame.y(-IN_TUNE, -most, most) - top),
				Style.filled(palette.tint(palette.done(), BAND))));
		elements.addAll(frame.outline(Messages.of("sound.cents")));
		for (double value : new double[] { -most, -most / 2, 0, most / 2, most }) {
			String number = Figures.number(Math.abs(value), value == Math.rint(value) ? 0 : 1);
			elements.addAll(frame.level(frame.y(value, -most, most),
					value == 0 ? number : (value > 0 ? "+" : "\u2212") + number, value == 0));
		}
		elements.addAll(frame.names());
		Set<String> usual = session.usual();
		Optional<ScaleHeard> still = session.still().filter(before -> session.isDragging());
		still.ifPresent(before -> elements.addAll(course(before, usual, palette.quiet(), most)));
		session.scale().ifPresent(now -> elements.addAll(course(now, usual, palette.read(), most)));
		session.scale().ifPresent(now -> Stream.of(false, true).forEach(isUsual -> now.notes().stream()
				.filter(note -> usual.contains(note.tone().name()) == isUsual && note.sound().cents().isPresent())
				.forEach(note -> elements.add(mark(note, isUsual, most)))));
		return elements;
	}

	/** The first of a few that holds all. */
	private double range() {
		double most = Stream.concat(session.scale().stream(), session.still().stream())
				.flatMap(scale -> scale.notes().stream()).flatMap(note -> note.sound().cents().stream())
				.mapToDouble(Math::abs).max().orElse(0);
		for (double range : RANGES) {
			if (range >= most) {
				return range;
			}
		}
		return RANGES[RANGES.length - 1];
	}

	/** The notes of the scale joined, so that its course is seen. */
	private List<Element> course(ScaleHeard heard, Set<String> usual, Ink ink, double most) {
		List<Element> lines = new ArrayList<>();
		ToneSound before = null;
		for (ToneSound note : heard.scale().orElseThrow().scale()) {
			if (note.sound().cents().isPresent() && usual.contains(note.tone().name())) {
				if (before != null) {
					lines.add(new Drawn(new Line(x(before), y(before, most), x(note), y(note, most)),
							Style.stroked(ink, LINE)));
				}
				before = note;
			}
		}
		return lines;
	}

	private Element mark(ToneSound note, boolean isUsual, double most) {
		Palette palette = frame.palette();
		String name = note.tone().name();
		List<Element> parts = new ArrayList<>();
		if (session.chosen().equals(Optional.of(name))) {
			parts.add(new Drawn(new Circle(x(note), y(note, most), CHOSEN),
					Style.of(new SolidFill(palette.tint(palette.accent(), FILL)), Stroke.of(palette.accent(), 2 * LINE))));
		}
		Circle circle = new Circle(x(note), y(note, most), isUsual ? RADIUS : RADIUS * 0.8);
		parts.add(new Drawn(circle, isUsual ? Style.filled(palette.read())
				: Style.of(new SolidFill(palette.ground()), Stroke.of(palette.quiet(), LINE))));
		return Group.named(NOTE + name, SoundWords.note(note, session.before(note)), parts);
	}

	private double x(ToneSound note) {
		return frame.x(note.tone().writtenCents() / 100.0);
	}

	private double y(ToneSound note, double most) {
		return frame.y(note.sound().cents().orElseThrow(), -most, most);
	}
}
