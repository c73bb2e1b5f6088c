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
import padwright.drawing.scene.Style;
import padwright.drawing.scene.Text;
import padwright.paper.page.FixedPart;
import padwright.paper.page.Part;
import padwright.paper.page.Typesetter;
import padwright.paper.sheet.SheetNote.Opening;

/**
 * Fingerings as a grid: a row for each note, a column for each touch, and on the right one for each hole, by the number
 * of the key over it. A filled square is a finger down, or a hole that is closed; half a square is half of that.
 *
 * @param width of the page between its margins, mm
 */
record FingeringChart(Typesetter typesetter, LayoutSheet sheet, double width) {

	/** Rows that stay together under heads of their own. */
	private static final int ROWS_IN_A_BLOCK = 12;
	private static final double ROW = 4.4;
	private static final double SIZE = 2.9;
	private static final double TITLE = 4.2;
	private static final double NAME = 19;
	private static final double WIDEST_TOUCH = 6.5;
	private static final double PURPOSE = 15;
	private static final double WIDEST_HOLE = 5;
	/** Of what touches and holes share, the part of the touches. */
	private static final double SHARE = 0.55;
	private static final double MARK = 2.3;
	/** Width of a letter for one of its size, generously. */
	private static final double LETTER = 0.58;
	/** What can still be read. */
	private static final double SMALLEST = 1.5;
	/** Radius of what marks a finger that is up, or a pad that is open. */
	private static final double DOT = 0.3;

	List<Part> parts() {
		List<Part> parts = new ArrayList<>();
		for (int first = 0; first < sheet.notes().size(); first += ROWS_IN_A_BLOCK) {
			parts.add(block(sheet.notes().subList(first, Math.min(first + ROWS_IN_A_BLOCK, sheet.notes().size())),
					first == 0));
		}
		return parts;
	}

	private Part block(List<SheetNote> notes, boolean titled) {
		List<Element> elements = new ArrayList<>();
		double top = titled ? TITLE * 1.9 : 1.5;
		if (titled) {
			elements.add(Text.of("Fingerings, and the holes they close", 0, TITLE * 1.4, Face.BOLD, TITLE));
		}
		elements.addAll(heads(top));
		double y = top + ROW;
		for (SheetNote note : notes) {
			elements.add(Group.named("note", description(note), row(note, y)));
			y += ROW;
		}
		return new FixedPart(y, elements);
	}

	private double room() {
		return width - NAME - PURPOSE;
	}

	private double touchWidth() {
		return Math.min(WIDEST_TOUCH, room() * SHARE / Math.max(1, sheet.touches().size()));
	}

	private double touchX(int touch) {
		return NAME + PURPOSE + (touch + 0.5) * touchWidth();
	}

	private double holesLeft() {
		return NAME + PURPOSE + sheet.touches().size() * touchWidth() + 2;
	}

	private double holeX(int hole) {
		return holesLeft() + (hole + 0.5) * holeWidth();
	}

	private double holeWidth() {
		return Math.min(WIDEST_HOLE, (width - holesLeft()) / Math.max(1, sheet.holes().size()));
	}

	private List<Element> heads(double top) {
		List<Element> elements = new ArrayList<>();
		elements.add(Text.of("note", 0, top + ROW * 0.72, Face.CONDENSED_BOLD, SIZE));
		for (int touch = 0; touch < sheet.touches().size(); touch++) {
			elements.add(head(touchMark(touch), touchX(touch), touchWidth(), top, Face.CONDENSED_BOLD));
		}
		for (int hole = 0; hole < sheet.holes().size(); hole++) {
			elements.add(head(sheet.holes().get(hole).mark(), holeX(hole), holeWidth(), top, Face.CONDENSED));
		}
		elements.add(rule(top + ROW, 0.3));
		return elements;
	}

	/** Its name where that can be read over its column, else its number in the table of touches. */
	private String touchMark(int touch) {
		String name = sheet.touches().get(touch);
		return size(name, touchWidth()) < SMALLEST ? String.valueOf(touch + 1) : name;
	}

	private static double size(String word, double room) {
		return Math.min(SIZE * 0.9, (room - 0.3) / (LETTER * Math.max(1, word.length())));
	}

	/** A word over a column, as small as it must be. */
	private static Element head(String word, double x, double room, double top, Face face) {
		return Text.centred(word, x, top + ROW / 2, face, size(word, room));
	}

	/** What a row shows, for whoever cannot see it. */
	private String description(SheetNote note) {
		return note.name() + (note.purpose().isEmpty() ? "" : " (" + note.purpose() + ")") + ": press "
				+ sheet.touches().stream().filter(note.touches()::contains)
						.map(touch -> note.half().contains(touch) ? "half " + touch : touch)
						.collect(Collectors.joining(" "))
				+ "; closed: " + marks(note, Opening.CLOSED) + "; half open: " + marks(note, Opening.HALF);
	}

	private String marks(SheetNote note, Opening opening) {
		String marks = sheet.holes().stream().filter(hole -> note.holes().get(hole.name()) == opening)
				.map(SheetHole::mark).collect(Collectors.joining(" "));
		return marks.isEmpty() ? "none" : marks;
	}

	private List<Element> row(SheetNote note, double top) {
		double middle = top + ROW / 2;
		List<Element> elements = new ArrayList<>();
		elements.add(typesetter.line(note.name(), 0, top + ROW * 0.72, Face.CONDENSED_BOLD, SIZE, NAME - 1));
		elements.add(typesetter.line(note.purpose(), NAME, top + ROW * 0.72, Face.CONDENSED, SIZE, PURPOSE - 1));
		for (int touch = 0; touch < sheet.touches().size(); touch++) {
			String name = sheet.touches().get(touch);
			elements.add(mark(touchX(touch), middle, Math.min(MARK, touchWidth() * 0.6), !note.touches().contains(name)
					? Opening.OPEN : note.half().contains(name) ? Opening.HALF : Opening.CLOSED));
		}
		for (int hole = 0; hole < sheet.holes().size(); hole++) {
			elements.add(mark(holeX(hole), middle, Math.min(MARK, holeWidth() * 0.6),
					note.holes().getOrDefault(sheet.holes().get(hole).name(), Opening.OPEN)));
		}
		elements.add(rule(top + ROW, 0.1));
		return elements;
	}

	private Element rule(double y, double thickness) {
		double right = Math.max(holesLeft(), holeX(sheet.holes().size() - 1) + holeWidth() / 2);
		return new Drawn(new Line(0, y, right, y), Style.stroked(Ink.grey(120), thickness));
	}

	private static Element mark(double x, double y, double side, Opening opening) {
		return switch (opening) {
		case OPEN -> new Drawn(new Circle(x, y, DOT), Style.filled(Ink.grey(120)));
		case HALF -> new Drawn(new Rectangle(x - side / 2, y, side, side / 2), Style.filled(Ink.BLACK));
		case CLOSED -> new Drawn(new Rectangle(x - side / 2, y - side / 2, side, side), Style.filled(Ink.BLACK));
		};
	}
}
