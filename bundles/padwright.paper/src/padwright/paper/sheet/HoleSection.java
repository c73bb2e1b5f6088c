package padwright.paper.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import padwright.drawing.scene.Circle;
import padwright.drawing.scene.Drawn;
import padwright.drawing.scene.Element;
import padwright.drawing.scene.Ink;
import padwright.drawing.scene.Line;
import padwright.drawing.scene.Path;
import padwright.drawing.scene.Rectangle;
import padwright.drawing.scene.SolidFill;
import padwright.drawing.scene.Stroke;
import padwright.drawing.scene.Style;
import padwright.engine.length.Length;
import padwright.paper.words.Messages;

/**
 * A section across the tube through one hole: the bore, the chimney with its rim and undercut and, under a key, the cup
 * that closes it with its opening and the arm to the axis that it turns on. Chimneys that are not said are not drawn.
 *
 * @param label what it is called on the sheet
 * @param bore across the tube at the hole, mm
 * @param size of the hole, all of it but the diameter as far as said
 * @param key over it; empty for one under a finger
 */
record HoleSection(String label, double bore, SheetFingerHole size, Optional<SheetKey> key) {

	/** Of one section, mm. */
	static final double CELL = 44;
	private static final double PIVOT = 0.7;
	/** For what is drawn, mm. */
	static final double ROOM = CELL - 2 * PIVOT;
	/** How far around the bore is drawn on either side of its top. */
	private static final double ARC = Math.toRadians(70);
	private static final double WIDEST_BORE = 30;
	private static final int STEPS = 24;
	private static final Length USUAL_DEPTH = Length.millimetres("3");
	private static final double USUAL_BORE = 19;

	static HoleSection of(SheetKey key, int number, List<SheetJoint> joints) {
		Length place = key.position().orElse(Length.ZERO);
		return new HoleSection(number + " " + key.label(), bore(key.joint(), place, joints), new SheetFingerHole(key.name(),
				key.label(), key.touch(), key.joint(), place, key.around(), key.hole(), key.rim(), key.chimney(), key.undercut()), Optional.of(key));
	}

	static HoleSection of(SheetFingerHole hole, List<SheetJoint> joints) {
		return new HoleSection(hole.title(), bore(hole.joint(), hole.position(), joints), hole, Optional.empty());
	}

	private static double bore(String joint, Length place, List<SheetJoint> joints) {
		return joints.stream().filter(each -> each.name().equals(joint)).findFirst().map(each -> each.across(place))
				.orElse(USUAL_BORE);
	}

	private static double millimetres(Optional<Length> length) {
		return length.map(Millimetres::value).orElse(0.0);
	}

	private double arm() {
		return millimetres(key.flatMap(SheetKey::arm));
	}

	private double cup() {
		return millimetres(key.flatMap(SheetKey::cup));
	}

	private double depth() {
		return cup() == 0 ? 0 : Millimetres.value(key.flatMap(SheetKey::depth).orElse(USUAL_DEPTH));
	}

	/** From the edge on the left to what lies furthest on the right, mm of the instrument. */
	double reach() {
		double across = Math.max(cup(), millimetres(size.diameter()) + 2 * millimetres(size.rim()));
		return across / 2 + Math.max(across / 2, arm());
	}

	/** From the bore's top to the cup's, mm on paper. */
	double above(DrawingScale scale) {
		return scale.onPaper(millimetres(size.chimney()) + depth()) + 1;
	}

	double below(DrawingScale scale) {
		double radius = scale.onPaper(bore) / 2;
		return radius * (1 - Math.cos(arc(radius))) + 1;
	}

	/** No further than the cell is wide. */
	private static double arc(double radius) {
		return Math.min(ARC, Math.asin(Math.min(1, WIDEST_BORE / 2 / radius)));
	}

	/** All that is said of it, in millimetres. */
	String sizes() {
		StringBuilder sizes = new StringBuilder(Messages.of("sheet.hole") + " " + Millimetres.of(size.diameter()));
		add(sizes, Messages.of("sheet.rim"), size.rim());
		add(sizes, Messages.of("sheet.chimney"), size.chimney());
		add(sizes, Messages.of("sheet.undercut"), size.undercut());
		add(sizes, Messages.of("sheet.cup"), key.flatMap(SheetKey::cup));
		add(sizes, Messages.of("sheet.deep"), key.flatMap(SheetKey::depth));
		add(sizes, Messages.of("sheet.opening"), key.flatMap(SheetKey::opening));
		add(sizes, Messages.of("sheet.arm"), key.flatMap(SheetKey::arm));
		return sizes.toString();
	}

	private static void add(StringBuilder sizes, String what, Optional<Length> size) {
		size.ifPresent(said -> sizes.append(", ").append(what).append(' ').append(Millimetres.of(said)));
	}

	/** The bore's top at 0. */
	List<Element> draw(DrawingScale scale) {
		double x = Math.min(CELL / 2, CELL - PIVOT - 1 - scale.onPaper(arm()));
		double rimTop = -scale.onPaper(millimetres(size.chimney()));
		List<Element> elements = new ArrayList<>(bore(x, scale));
		if (cup() > 0) {
			elements.addAll(cup(x, rimTop, scale));
		}
		elements.add(wall(x, -1, rimTop, scale));
		elements.add(wall(x, 1, rimTop, scale));
		if (arm() > 0) {
			elements.addAll(arm(x, rimTop - scale.onPaper(depth()), scale));
		}
		return elements;
	}

	/** With the opening of a perforated one. */
	private List<Element> cup(double x, double rimTop, DrawingScale scale) {
		double wide = scale.onPaper(cup());
		double depth = scale.onPaper(depth());
		double opening = scale.onPaper(millimetres(key.flatMap(SheetKey::opening)));
		Style style = Style.of(new SolidFill(Ink.grey(225)), Stroke.of(Ink.BLACK, 0.3));
		if (opening == 0) {
			return List.of(new Drawn(new Rectangle(x - wide / 2, rimTop - depth, wide, depth), style));
		}
		double part = (wide - opening) / 2;
		return List.of(new Drawn(new Rectangle(x - wide / 2, rimTop - depth, part, depth), style),
				new Drawn(new Rectangle(x + opening / 2, rimTop - depth, part, depth), style));
	}

	/** From the rim to the bore, wider below by the undercut. */
	private Element wall(double x, int side, double rimTop, DrawingScale scale) {
		double radius = scale.onPaper(bore) / 2;
		double hole = scale.onPaper(millimetres(size.diameter())) / 2;
		double foot = foot(radius, hole);
		double outside = hole + Math.max(0.25, scale.onPaper(millimetres(size.rim())));
		double below = Math.min(outside - 0.1, hole + scale.onPaper(millimetres(size.undercut())) / 2);
		double bottom = Math.max(rimTop + 0.1, foot);
		Path.Recorder wall = new Path.Recorder();
		wall.moveTo(x + side * hole, rimTop);
		wall.lineTo(x + side * outside, rimTop);
		wall.lineTo(x + side * outside, bottom);
		wall.lineTo(x + side * below, bottom);
		wall.close();
		return new Drawn(wall.path(), Style.filled(Ink.grey(90)));
	}

	/** How far below its top the bore is at the edge of a hole. */
	private static double foot(double radius, double hole) {
		return radius - Math.sqrt(Math.max(0, radius * radius - hole * hole));
	}

	private List<Element> arm(double x, double cupTop, DrawingScale scale) {
		double pivot = x + scale.onPaper(arm());
		double y = cupTop + scale.onPaper(depth()) / 2;
		return List.of(new Drawn(new Line(x, cupTop - 0.5, pivot, y), Style.stroked(Ink.BLACK, 0.5)),
				new Drawn(new Circle(pivot, y, PIVOT), Style.of(new SolidFill(Ink.WHITE), Stroke.of(Ink.BLACK, 0.4))));
	}

	/** Left and right of the hole. */
	private List<Element> bore(double x, DrawingScale scale) {
		double radius = scale.onPaper(bore) / 2;
		double from = Math.asin(Math.min(1, scale.onPaper(millimetres(size.diameter())) / 2 / radius));
		List<Element> elements = new ArrayList<>();
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
}
