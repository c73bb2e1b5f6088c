package padwright.paper.film;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

import padwright.drawing.scene.Circle;
import padwright.drawing.scene.Drawn;
import padwright.drawing.scene.Element;
import padwright.drawing.scene.Face;
import padwright.drawing.scene.Group;
import padwright.drawing.scene.Ink;
import padwright.drawing.scene.RingSector;
import padwright.drawing.scene.Stroke;
import padwright.drawing.scene.Style;
import padwright.drawing.scene.Text;
import padwright.engine.clock.ClockHour;
import padwright.paper.page.Column;
import padwright.paper.page.Typesetter;
import padwright.paper.words.Messages;
import padwright.workup.words.LengthWords;

/** A disc at full size with its pieces numbered, and beside it whose they are. */
record DiscCell(Typesetter typesetter, FilmDisc disc) {

	private static final double LEGEND_WIDTH = 30;
	private static final double LEGEND_GAP = 2;
	private static final double SIZE = 2.8;
	private static final double NUMBER = 2.6;
	private static final double CUT_LINE = 0.18;
	private static final double LEADING = 1.16;

	double width() {
		return diameter() + LEGEND_GAP + LEGEND_WIDTH;
	}

	double height() {
		return Math.max(diameter(), (disc.cuts().size() + 1) * SIZE * LEADING);
	}

	private double diameter() {
		return 2 * disc.ring().outer();
	}

	/** From the upper left corner of the cell. */
	List<Element> draw() {
		double radius = disc.ring().outer();
		List<Element> elements = new ArrayList<>();
		Stroke edge = Stroke.of(Ink.BLACK, 0.1).dashed(0.6, 0.6);
		elements.add(new Drawn(new Circle(radius, radius, radius), Style.stroked(edge)));
		for (int number = 1; number <= disc.cuts().size(); number++) {
			elements.addAll(piece(disc.cuts().get(number - 1), number));
		}
		String pieces = disc.cuts().stream().map(cut -> cut.piece().label()).collect(Collectors.joining("; "));
		List<Element> cell = new ArrayList<>();
		cell.add(Group.named("disc", Messages.of("film.discMeaning", pieces), elements));
		cell.addAll(legend());
		return cell;
	}

	private List<Element> piece(FilmDisc.Cut cut, int number) {
		RingSize ring = disc.ring();
		double from = angle(cut.startHalfHour());
		double sweep = angle(cut.endHalfHour()) - from;
		double middle = (ring.inner() + ring.outer()) / 2;
		double toward = from + sweep / 2;
		Text label = Text.centred(Integer.toString(number), ring.outer() + middle * StrictMath.sin(toward),
				ring.outer() - middle * StrictMath.cos(toward), Face.CONDENSED_BOLD,
				Math.min(NUMBER, (ring.outer() - ring.inner()) * 0.7));
		RingSector outline = new RingSector(ring.outer(), ring.outer(), ring.inner(), ring.outer(), from, sweep);
		return List.of(new Drawn(outline, Style.stroked(Ink.BLACK, CUT_LINE)), label);
	}

	private static double angle(int halfHours) {
		return halfHours * 2 * Math.PI / ClockHour.STATIONS;
	}

	private List<Element> legend() {
		Column column = new Column(typesetter, diameter() + LEGEND_GAP, 0, LEGEND_WIDTH);
		String diameter = LengthWords.millimetres(disc.diameter(), 2);
		column.line("⌀ " + diameter + " mm", Face.CONDENSED, SIZE, 0);
		for (int number = 1; number <= disc.cuts().size(); number++) {
			column.line(number + "  " + disc.cuts().get(number - 1).piece().label(), Face.CONDENSED_BOLD, SIZE, 0);
		}
		return column.elements();
	}
}
