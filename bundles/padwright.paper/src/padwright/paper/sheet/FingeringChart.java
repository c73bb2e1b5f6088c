package padwright.paper.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

import padwright.drawing.scene.Circle;
import padwright.drawing.scene.Drawn;
import padwright.drawing.scene.Element;
import padwright.drawing.scene.Face;
import padwright.drawing.scene.Group;
import padwright.drawing.scene.Ink;
import padwright.drawing.scene.Line;
import padwright.drawing.scene.Rectangle;
import padwright.drawing.scene.Stroke;
import padwright.drawing.scene.Style;
import padwright.drawing.scene.Text;
import padwright.paper.page.FixedPart;
import padwright.paper.page.Part;
import padwright.paper.page.Typesetter;
import padwright.paper.sheet.SheetNote.Opening;
import padwright.paper.words.Messages;

/**
 * Fingerings as a grid, one for each purpose: a row for each note, a column for each touch, and on the right one for each
 * hole, by the number of the key over it. A filled square is a finger down; a ring is an open hole, a disc a closed one;
 * half of either is half of that.
 *
 * @param width of the page between its margins, mm
 */
record FingeringChart(Typesetter typesetter, LayoutSheet sheet, double width) {

	/** Rows that fit on a page under heads of their own. */
	private static final int MOST_ROWS = 40;
	private static final double ROW = 4.4;
	private static final double SIZE = 2.9;
	private static final double TITLE = 4.2;
	private static final double NAME = 32;
	private static final double WIDEST_TOUCH = 6;
	private static final double WIDEST_HOLE = 5;
	private static final double BETWEEN = 3;
	private static final double MARK = 2.3;
	/** Radius of what marks a finger that is up. */
	private static final double DOT = 0.3;

	List<Part> parts() {
		List<Part> parts = new ArrayList<>();
		List<String> purposes = sheet.notes().stream().map(SheetNote::purpose).distinct().toList();
		for (String purpose : purposes) {
			List<SheetNote> notes = sheet.notes().stream().filter(note -> note.purpose().equals(purpose)).toList();
			int blocks = (notes.size() + MOST_ROWS - 1) / MOST_ROWS;
			int rows = (notes.size() + blocks - 1) / blocks;
			for (int first = 0; first < notes.size(); first += rows) {
				String title = purpose.isEmpty() ? Messages.of("sheet.fingerings") : Messages.of("sheet.fingeringsFor", purpose);
				parts.add(block(first == 0 ? title : Messages.of("sheet.continued", title),
						notes.subList(first, Math.min(first + rows, notes.size()))));
			}
		}
		return parts;
	}

	private Part block(String title, List<SheetNote> notes) {
		List<Element> elements = new ArrayList<>();
		elements.add(Text.of(title, 0, TITLE * 1.4, Face.BOLD, TITLE));
		double y = TITLE * 1.9 + Math.max(touchHeads().height(), holeHeads().height());
		elements.add(Text.of(Messages.of("sheet.note"), 0, y - ROW * 0.28, Face.CONDENSED_BOLD, SIZE));
		elements.addAll(touchHeads().draw(NAME, y));
		elements.addAll(holeHeads().draw(holesLeft(), y));
		elements.add(rule(y, 0.3));
		for (SheetNote note : notes) {
			elements.add(Group.named("note", description(note), row(note, y)));
			y += ROW;
		}
		return new FixedPart(y + TITLE / 2, elements);
	}

	private ChartHeads touchHeads() {
		return new ChartHeads(typesetter, sheet.touches(), Face.CONDENSED_BOLD, touchWidth());
	}

	private ChartHeads holeHeads() {
		return new ChartHeads(typesetter, sheet.holes().stream().map(SheetHole::mark).toList(), Face.CONDENSED, holeWidth());
	}

	/** Of what touches and holes share, mm. */
	private double column() {
		return (width - NAME - BETWEEN) / Math.max(1, sheet.touches().size() + sheet.holes().size());
	}

	private double touchWidth() {
		return Math.min(WIDEST_TOUCH, column());
	}

	private double touchX(int touch) {
		return NAME + (touch + 0.5) * touchWidth();
	}

	private double holesLeft() {
		return NAME + sheet.touches().size() * touchWidth() + BETWEEN;
	}

	private double holeX(int hole) {
		return holesLeft() + (hole + 0.5) * holeWidth();
	}

	private double holeWidth() {
		return Math.min(WIDEST_HOLE, column());
	}

	/** What a row shows, for whoever cannot see it. */
	private String description(SheetNote note) {
		String name = note.name() + (note.purpose().isEmpty() ? "" : " (" + note.purpose() + ")");
		String pressed = sheet.touches().stream().filter(note.touches()::contains)
				.map(touch -> note.half().contains(touch) ? Messages.of("sheet.half", touch) : touch)
				.collect(Collectors.joining(" "));
		return Messages.of("sheet.noteMeaning", name, pressed, marks(note, Opening.CLOSED), marks(note, Opening.HALF));
	}

	private String marks(SheetNote note, Opening opening) {
		String marks = sheet.holes().stream().filter(hole -> note.holes().get(hole.name()) == opening)
				.map(SheetHole::mark).collect(Collectors.joining(" "));
		return marks.isEmpty() ? Messages.of("none") : marks;
	}

	private List<Element> row(SheetNote note, double top) {
		double middle = top + ROW / 2;
		List<Element> elements = new ArrayList<>();
		elements.add(typesetter.line(note.name(), 0, top + ROW * 0.72, Face.CONDENSED_BOLD, SIZE, NAME - 1));
		for (int touch = 0; touch < sheet.touches().size(); touch++) {
			String name = sheet.touches().get(touch);
			elements.add(finger(touchX(touch), middle, Math.min(MARK, touchWidth() * 0.65), !note.touches().contains(name)
					? Opening.OPEN : note.half().contains(name) ? Opening.HALF : Opening.CLOSED));
		}
		for (int hole = 0; hole < sheet.holes().size(); hole++) {
			elements.addAll(hole(holeX(hole), middle, Math.min(MARK, holeWidth() * 0.65) / 2,
					note.holes().getOrDefault(sheet.holes().get(hole).name(), Opening.OPEN)));
		}
		elements.add(rule(top + ROW, 0.1));
		return elements;
	}

	private Element rule(double y, double thickness) {
		double right = holesLeft() + sheet.holes().size() * holeWidth();
		return new Drawn(new Line(0, y, right, y), Style.stroked(Ink.grey(120), thickness));
	}

	private static Element finger(double x, double y, double side, Opening opening) {
		return switch (opening) {
		case OPEN -> new Drawn(new Circle(x, y, DOT), Style.filled(Ink.grey(120)));
		case HALF -> new Drawn(new Rectangle(x - side / 2, y, side, side / 2), Style.filled(Ink.BLACK));
		case CLOSED -> new Drawn(new Rectangle(x - side / 2, y - side / 2, side, side), Style.filled(Ink.BLACK));
		};
	}

	private static List<Element> hole(double x, double y, double radius, Opening opening) {
		Drawn ring = new Drawn(new Circle(x, y, radius), Style.stroked(Stroke.of(Ink.BLACK, 0.2)));
		return switch (opening) {
		case OPEN -> List.of(ring);
		case HALF -> List.of(new Drawn(Ellipse.lowerHalf(x, y, radius), Style.filled(Ink.BLACK)), ring);
		case CLOSED -> List.of(new Drawn(new Circle(x, y, radius + 0.1), Style.filled(Ink.BLACK)));
		};
	}
}
