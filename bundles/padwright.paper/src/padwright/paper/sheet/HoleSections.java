package padwright.paper.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

import padwright.drawing.scene.Circle;
import padwright.drawing.scene.Drawn;
import padwright.drawing.scene.Element;
import padwright.drawing.scene.Face;
import padwright.drawing.scene.Group;
import padwright.drawing.scene.Ink;
import padwright.drawing.scene.Line;
import padwright.drawing.scene.Path;
import padwright.drawing.scene.Rectangle;
import padwright.drawing.scene.SolidFill;
import padwright.drawing.scene.Stroke;
import padwright.drawing.scene.Style;
import padwright.drawing.scene.Text;
import padwright.engine.length.Length;
import padwright.paper.page.FixedPart;
import padwright.paper.page.Part;
import padwright.paper.page.Typesetter;

/**
 * A section across the tube through every hole under a cup, all at one scale: the bore, the chimney with its rim, the pad
 * that closes it, the cup, and the arm to the axis that it turns on. Chimneys that are not said are not drawn.
 *
 * @param width of the page between its margins, mm
 */
record HoleSections(Typesetter typesetter, LayoutSheet sheet, double width) {

	private static final double CELL = 44;
	private static final double GAP = 3;
	private static final double TITLE = 4.2;
	private static final double SIZE = 2.7;
	private static final double LINE = 3.4;
	/** Of sizes below a section. */
	private static final int MOST_LINES = 3;
	private static final double PIVOT = 0.7;
	/** How far around the bore is drawn on either side of its top. */
	private static final double ARC = Math.toRadians(70);
	private static final double WIDEST_BORE = 30;
	private static final int STEPS = 24;
	private static final Length USUAL_DEPTH = Length.millimetres("3");
	private static final double USUAL_BORE = 19;

	List<Part> parts() {
		List<Integer> keys = IntStream.range(0, sheet.keys().size()).filter(this::isKnown).boxed().toList();
		int inARow = (int) ((width + GAP) / (CELL + GAP));
		List<Part> parts = new ArrayList<>();
		for (int first = 0; first < keys.size(); first += inARow) {
			parts.add(row(keys.subList(first, Math.min(first + inARow, keys.size())), first == 0, scale(keys)));
		}
		return parts;
	}

	private boolean isKnown(int key) {
		return sheet.keys().get(key).hole().isPresent() && sheet.keys().get(key).cup().isPresent();
	}

	/** At which the widest of them fits into its cell. */
	private DrawingScale scale(List<Integer> keys) {
		double widest = keys.stream().map(sheet.keys()::get).mapToDouble(key -> millimetres(key.cup()) / 2
				+ Math.max(millimetres(key.cup()) / 2, millimetres(key.arm()))).max().orElse(1);
		return DrawingScale.fitting(widest, CELL - 2 * PIVOT);
	}

	private double bore(SheetKey key) {
		return sheet.joints().stream().filter(joint -> joint.name().equals(key.joint())).findFirst()
				.map(joint -> joint.across(key.position().orElse(Length.ZERO))).orElse(USUAL_BORE);
	}

	private static double millimetres(Optional<Length> length) {
		return length.map(Millimetres::value).orElse(0.0);
	}

	private Part row(List<Integer> keys, boolean titled, DrawingScale scale) {
		List<Element> elements = new ArrayList<>();
		double top = 1;
		if (titled) {
			elements.add(Text.of("Sections through the holes, " + scale, 0, TITLE * 1.4, Face.BOLD, TITLE));
			top = TITLE * 2;
		}
		double high = keys.stream().mapToDouble(key -> above(key, scale)).max().orElse(0);
		double low = keys.stream().mapToDouble(key -> below(key, scale)).max().orElse(0);
		for (int index = 0; index < keys.size(); index++) {
			elements.add(Group.named("section", "Section through " + sheet.keys().get(keys.get(index)).label(),
					section(keys.get(index), scale, low + LINE)).at(index * (CELL + GAP), top + high));
		}
		return new FixedPart(top + high + low + (1 + MOST_LINES) * LINE + GAP, elements);
	}

	/** From the bore's top to the cup's. */
	private double above(int key, DrawingScale scale) {
		SheetKey drawn = sheet.keys().get(key);
		return scale.onPaper(millimetres(drawn.chimney()) + Millimetres.value(drawn.depth().orElse(USUAL_DEPTH))) + 1;
	}

	private double below(int key, DrawingScale scale) {
		double radius = scale.onPaper(bore(sheet.keys().get(key))) / 2;
		return radius * (1 - Math.cos(arc(radius))) + 1;
	}

	/** No further than the cell is wide. */
	private static double arc(double radius) {
		return Math.min(ARC, Math.asin(Math.min(1, WIDEST_BORE / 2 / radius)));
	}

	/** The bore's top at 0. */
	private List<Element> section(int key, DrawingScale scale, double below) {
		SheetKey drawn = sheet.keys().get(key);
		double radius = scale.onPaper(bore(drawn)) / 2;
		double cup = scale.onPaper(millimetres(drawn.cup()));
		double hole = scale.onPaper(millimetres(drawn.hole())) / 2;
		double arm = scale.onPaper(millimetres(drawn.arm()));
		double x = Math.min(CELL / 2, CELL - PIVOT - 1 - arm);
		double rimTop = -scale.onPaper(millimetres(drawn.chimney()));
		double depth = scale.onPaper(Millimetres.value(drawn.depth().orElse(USUAL_DEPTH)));
		List<Element> elements = new ArrayList<>(bore(x, radius, hole));
		elements.add(box(x - cup / 2, rimTop - depth, cup, depth, Style.of(new SolidFill(Ink.grey(225)), Stroke.of(Ink.BLACK, 0.3))));
		for (int side : new int[] { -1, 1 }) {
			double wall = Math.max(0.25, scale.onPaper(millimetres(drawn.rim())));
			double foot = -Math.sqrt(Math.max(0, radius * radius - hole * hole)) + radius;
			elements.add(box(side < 0 ? x - hole - wall : x + hole, rimTop, wall, Math.max(0.1, foot - rimTop),
					Style.filled(Ink.grey(90))));
		}
		if (arm > 0) {
			double pivot = x + arm;
			elements.add(new Drawn(new Line(x, rimTop - depth - 0.5, pivot, rimTop - depth / 2),
					Style.stroked(Ink.BLACK, 0.5)));
			elements.add(new Drawn(new Circle(pivot, rimTop - depth / 2, PIVOT),
					Style.of(new SolidFill(Ink.WHITE), Stroke.of(Ink.BLACK, 0.4))));
		}
		elements.addAll(texts(key, below));
		return elements;
	}

	private static Element box(double left, double top, double wide, double high, Style style) {
		return new Drawn(new Rectangle(left, top, wide, high), style);
	}

	/** Left and right of the hole. */
	private static List<Element> bore(double x, double radius, double hole) {
		List<Element> elements = new ArrayList<>();
		double from = Math.asin(Math.min(1, hole / radius));
		for (int side : new int[] { -1, 1 }) {
			Path.Recorder wall = new Path.Recorder();
			for (int step = 0; step <= STEPS; step++) {
				double angle = from + Math.max(0.01, arc(radius) - from) * step / STEPS;
				double atX = x + side * radius * Math.sin(angle);
				double atY = radius - radius * Math.cos(angle);
				if (step == 0) {
					wall.moveTo(atX, atY);
				} else {
					wall.lineTo(atX, atY);
				}
			}
			elements.add(new Drawn(wall.path(), Style.stroked(Ink.BLACK, 0.3)));
		}
		return elements;
	}

	private List<Element> texts(int key, double y) {
		SheetKey drawn = sheet.keys().get(key);
		StringBuilder sizes = new StringBuilder("hole " + Millimetres.of(drawn.hole()));
		add(sizes, "rim", Millimetres.of(drawn.rim()));
		add(sizes, "chimney", Millimetres.of(drawn.chimney()));
		add(sizes, "cup", Millimetres.of(drawn.cup()));
		add(sizes, "deep", Millimetres.of(drawn.depth()));
		add(sizes, "arm", Millimetres.of(drawn.arm()));
		List<Element> elements = new ArrayList<>();
		elements.add(typesetter.line((key + 1) + " " + drawn.label(), 0, y, Face.CONDENSED_BOLD, SIZE, CELL));
		List<String> lines = typesetter.wrap(sizes.toString(), Face.CONDENSED, SIZE, CELL, MOST_LINES);
		for (int index = 0; index < lines.size(); index++) {
			elements.add(Text.of(lines.get(index), 0, y + (index + 1) * LINE, Face.CONDENSED, SIZE));
		}
		return elements;
	}

	private static void add(StringBuilder sizes, String what, String size) {
		if (!size.isEmpty()) {
			sizes.append(", ").append(what).append(' ').append(size);
		}
	}
}
