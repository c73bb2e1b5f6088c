package padwright.paper.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

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

/**
 * Fingerings as a grid: a row for each note, a column for each touch, and on the right one for each pad by its number.
 * A filled square is a finger down, or a pad that is closed.
 *
 * @param width of the page between its margins, mm
 */
record FingeringChart(Typesetter typesetter, LayoutSheet sheet, double width) {

	private static final List<String> TOUCHES = List.of("T", "L1", "L2", "L3", "L4", "R1", "R2", "R3", "R4");
	/** Rows that stay together under heads of their own. */
	private static final int ROWS_IN_A_BLOCK = 12;
	private static final double ROW = 4.4;
	private static final double SIZE = 2.9;
	private static final double TITLE = 4.2;
	private static final double NAME = 19;
	private static final double TOUCH = 5.2;
	private static final double KEYS = 26;
	private static final double WIDEST_PAD = 5;
	private static final double MARK = 2.3;
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
			elements.add(Text.of("Fingerings, and the pads they close", 0, TITLE * 1.4, Face.BOLD, TITLE));
		}
		elements.addAll(heads(top));
		double y = top + ROW;
		for (SheetNote note : notes) {
			elements.add(Group.named("note", description(note), row(note, y)));
			y += ROW;
		}
		return new FixedPart(y, elements);
	}

	private double touchX(int touch) {
		return NAME + (touch + 0.5) * TOUCH;
	}

	private double padsLeft() {
		return NAME + TOUCHES.size() * TOUCH + KEYS;
	}

	private double padX(int key) {
		return padsLeft() + (key + 0.5) * padWidth();
	}

	private double padWidth() {
		return Math.min(WIDEST_PAD, (width - padsLeft()) / sheet.keys().size());
	}

	private List<Element> heads(double top) {
		double middle = top + ROW / 2;
		List<Element> elements = new ArrayList<>();
		elements.add(Text.of("note", 0, top + ROW * 0.72, Face.CONDENSED_BOLD, SIZE));
		for (int touch = 0; touch < TOUCHES.size(); touch++) {
			elements.add(Text.centred(TOUCHES.get(touch), touchX(touch), middle, Face.CONDENSED_BOLD, SIZE));
		}
		elements.add(Text.of("and keys", padsLeft() - KEYS + 1, top + ROW * 0.72, Face.CONDENSED_BOLD, SIZE));
		for (int key = 0; key < sheet.keys().size(); key++) {
			elements.add(Text.centred(String.valueOf(key + 1), padX(key), middle, Face.CONDENSED,
					Math.min(SIZE * 0.9, padWidth() * 0.7)));
		}
		elements.add(rule(top + ROW, 0.3));
		return elements;
	}

	/** What a row shows, for whoever cannot see it. */
	private String description(SheetNote note) {
		Stream<String> pressed = Stream.concat(TOUCHES.stream().filter(note.touches()::contains), note.keys().stream());
		return note.name() + ": press " + pressed.collect(Collectors.joining(" ")) + "; closed pads: "
				+ note.closed().map(closed -> IntStream.range(0, sheet.keys().size())
						.filter(key -> closed.contains(sheet.keys().get(key).name())).map(key -> key + 1)
						.mapToObj(String::valueOf).collect(Collectors.joining(" "))).orElse("cannot be told");
	}

	private List<Element> row(SheetNote note, double top) {
		double middle = top + ROW / 2;
		List<Element> elements = new ArrayList<>();
		elements.add(typesetter.line(note.name(), 0, top + ROW * 0.72, Face.CONDENSED_BOLD, SIZE, NAME - 1));
		for (int touch = 0; touch < TOUCHES.size(); touch++) {
			elements.add(mark(touchX(touch), middle, MARK, note.touches().contains(TOUCHES.get(touch))));
		}
		elements.add(typesetter.line(String.join(" ", note.keys()), padsLeft() - KEYS + 1, top + ROW * 0.72,
				Face.CONDENSED, SIZE, KEYS - 2));
		note.closed().ifPresentOrElse(closed -> {
			for (int key = 0; key < sheet.keys().size(); key++) {
				elements.add(mark(padX(key), middle, Math.min(MARK, padWidth() * 0.6),
						closed.contains(sheet.keys().get(key).name())));
			}
		}, () -> elements.add(Text.of("cannot be told: see check", padsLeft(), top + ROW * 0.72, Face.CONDENSED, SIZE)));
		elements.add(rule(top + ROW, 0.1));
		return elements;
	}

	private Element rule(double y, double thickness) {
		double right = padX(sheet.keys().size() - 1) + padWidth() / 2;
		return new Drawn(new Line(0, y, right, y), Style.stroked(Ink.grey(120), thickness));
	}

	private static Element mark(double x, double y, double side, boolean filled) {
		return filled
				? new Drawn(new Rectangle(x - side / 2, y - side / 2, side, side), Style.filled(Ink.BLACK))
				: new Drawn(new Circle(x, y, DOT), Style.filled(Ink.grey(120)));
	}
}
