package padwright.paper.sheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

import padwright.drawing.layout.Lanes;
import padwright.drawing.scene.Anchor;
import padwright.drawing.scene.Circle;
import padwright.drawing.scene.Drawn;
import padwright.drawing.scene.Element;
import padwright.drawing.scene.Face;
import padwright.drawing.scene.Ink;
import padwright.drawing.scene.Line;
import padwright.drawing.scene.Path;
import padwright.drawing.scene.SolidFill;
import padwright.drawing.scene.Stroke;
import padwright.drawing.scene.Style;
import padwright.drawing.scene.Text;
import padwright.engine.length.Length;
import padwright.paper.page.Typesetter;
import padwright.paper.words.Messages;

/**
 * The keys and rods of one joint, its upper end on top, its surface unrolled at the width of its bore: positions, angles
 * and diameters to scale. Keys hinged on the far side of which no angle is said stand in a row beside the others.
 */
final class JointMap {

	private static final double RULE_WIDTH = 13;
	private static final double LANE = 3.4;
	static final double HEADING = 4;
	static final double TOP = 8;
	private static final double GAP = 2.5;
	private static final double TICKS_EVERY = 50;
	/** In a hole that is smaller no number can be read; it stands beside the cup alone. Mm on paper. */
	private static final double LEAST_FOR_NUMBER = 3.2;
	private static final Length USUAL_FINGER_HOLE = Length.millimetres("7");
	/** The bore of a flute, where none is said (common practice, no source). */
	private static final Length USUAL_BORE = Length.millimetres("19");

	private final Typesetter typesetter;
	private final LayoutSheet sheet;
	private final SheetJoint joint;
	private final DrawingScale scale;
	private final List<Integer> keys;
	private final List<Integer> couplings;
	private final List<Integer> lanes;
	private final double widestCup;

	JointMap(Typesetter typesetter, LayoutSheet sheet, SheetJoint joint, DrawingScale scale) {
		this.typesetter = typesetter;
		this.sheet = sheet;
		this.joint = joint;
		this.scale = scale;
		this.keys = IntStream.range(0, sheet.keys().size()).filter(this::isHere).boxed()
				.sorted(Comparator.comparing((Integer key) -> sheet.keys().get(key).position().orElseThrow())).toList();
		this.couplings = IntStream.range(0, sheet.couplings().size())
				.filter(index -> keys.contains(sheet.couplings().get(index).driver())
						&& keys.contains(sheet.couplings().get(index).driven())).boxed().toList();
		this.lanes = Lanes.of(couplings.stream().map(index -> Lanes.Stretch.between(
				y(sheet.couplings().get(index).driver()), y(sheet.couplings().get(index).driven()))).toList());
		this.widestCup = keys.stream().mapToDouble(this::diameter).max().orElse(0);
	}

	private boolean isHere(int key) {
		return sheet.keys().get(key).joint().equals(joint.name()) && sheet.keys().get(key).position().isPresent();
	}

	boolean isEmpty() {
		return keys.isEmpty() && fingerHoles().findAny().isEmpty();
	}

	/** What reaches furthest down the joint, mm on paper. */
	double height() {
		double lowest = Math.max(keys.stream().mapToDouble(key -> y(key) + diameter(key) / 2).max().orElse(TOP),
				fingerHoles().mapToDouble(hole -> y(hole) + GAP).max().orElse(TOP));
		return Math.max(Math.max(lowest, end()), Callout.end(callouts())) + GAP;
	}

	double width() {
		return labelsLeft() + Callout.width(callouts());
	}

	/** The line on top. */
	private double nearX() {
		return RULE_WIDTH + (lanes.stream().mapToInt(lane -> lane + 1).max().orElse(0) + 1) * LANE + widestCup / 2
				- furthestLeft();
	}

	/** How far what lies on the left of the line on top is from it; zero or less. */
	private double furthestLeft() {
		return Math.min(0, Stream.concat(keys.stream().map(key -> sheet.keys().get(key).around()),
				fingerHoles().map(SheetFingerHole::around)).mapToDouble(this::arc).min().orElse(0));
	}

	private double x(int key) {
		return nearX() + (sheet.keys().get(key).isFar() ? widestCup + GAP : arc(sheet.keys().get(key).around()));
	}

	/** How far from the line on top an angle lies when the bore is unrolled, mm on paper; the side beyond half a turn left. */
	private double arc(double around) {
		double turn = Math.IEEEremainder(around, 360);
		return scale.onPaper(Millimetres.value(joint.width().orElse(USUAL_BORE)) * Math.PI * turn / 360);
	}

	private double labelsLeft() {
		double right = keys.stream().mapToDouble(key -> x(key) + widestCup / 2).max().orElse(nearX());
		double holes = fingerHoles().mapToDouble(hole -> nearX() + arc(hole.around()) + radius(hole)).max().orElse(nearX());
		double rods = rods().mapToDouble(rod -> nearX() + arc(rod.around())).max().orElse(nearX());
		return Math.max(Math.max(right, holes), rods) + 3 * GAP;
	}

	private double y(int key) {
		return y(sheet.keys().get(key).position().orElseThrow());
	}

	private double y(Length place) {
		return TOP + scale.onPaper(Millimetres.value(place));
	}

	/** A key whose cup is not known is drawn as wide as its hole, or as a dot. */
	private double diameter(int key) {
		SheetKey drawn = sheet.keys().get(key);
		return scale.onPaper(drawn.cup().or(drawn::hole).map(Millimetres::value).orElse(2.0));
	}

	/** What the map shows, for whoever cannot see it; the tables say where each key lies. */
	String description() {
		return Messages.of("sheet.map", joint.name(),
				keys.stream().map(key -> sheet.keys().get(key).label()).collect(Collectors.joining(", ")));
	}

	/** Lines first, so that cups lie over them. */
	List<Element> draw() {
		List<Element> elements = new ArrayList<>();
		elements.add(Text.of(joint.name(), 0, HEADING, Face.BOLD, HEADING));
		elements.addAll(rule());
		for (int index = 0; index < couplings.size(); index++) {
			elements.addAll(coupling(index));
		}
		rods().forEach(rod -> elements.addAll(rod(rod)));
		fingerHoles().forEach(hole -> elements.add(fingerHole(hole)));
		elements.addAll(Callout.draw(callouts(), labelsLeft(), typesetter));
		keys.forEach(key -> elements.addAll(cup(key)));
		return elements;
	}

	private Stream<SheetFingerHole> fingerHoles() {
		return sheet.fingerHoles().stream().filter(hole -> hole.joint().equals(joint.name()));
	}

	private Element fingerHole(SheetFingerHole hole) {
		return new Drawn(new Circle(nearX() + arc(hole.around()), y(hole), radius(hole)),
				Style.of(new SolidFill(Ink.WHITE), Stroke.of(Ink.BLACK, 0.3)));
	}

	private double radius(SheetFingerHole hole) {
		return scale.onPaper(Millimetres.value(hole.diameter().orElse(USUAL_FINGER_HOLE))) / 2;
	}

	private double y(SheetFingerHole hole) {
		return y(hole.position());
	}

	private Stream<SheetRod> rods() {
		return sheet.rods().stream().filter(rod -> rod.joint().equals(joint.name()));
	}

	/** From post to post. */
	private List<Element> rod(SheetRod rod) {
		double x = nearX() + arc(rod.around());
		return SheetPosts.rod(x, y(rod.from()), x, y(rod.to()), SheetPosts.NEAR);
	}

	/** The lower end or, where the length is not said, the last hole. */
	private double end() {
		return joint.length().map(this::y).orElseGet(() -> Math.max(keys.stream().mapToDouble(this::y).max().orElse(TOP),
				fingerHoles().mapToDouble(this::y).max().orElse(TOP)));
	}

	/** Distances from the upper end. */
	private List<Element> rule() {
		double end = end();
		List<Element> elements = new ArrayList<>();
		elements.add(line(RULE_WIDTH - 3, TOP, RULE_WIDTH - 3, end, 0.2));
		for (double mm = 0; TOP + scale.onPaper(mm) <= end; mm += TICKS_EVERY) {
			double y = TOP + scale.onPaper(mm);
			elements.add(line(RULE_WIDTH - 4.5, y, RULE_WIDTH - 1.5, y, 0.2));
			elements.add(Text.of(String.valueOf(Math.round(mm)), RULE_WIDTH - 5, y + 0.9, Face.CONDENSED, 2.5)
					.anchored(Anchor.END));
		}
		return elements;
	}

	/** From the driver's dot along a lane to an arrow at the driven key, with its number. */
	private List<Element> coupling(int index) {
		SheetCoupling coupling = sheet.couplings().get(couplings.get(index));
		double lane = nearX() + furthestLeft() - widestCup / 2 - (lanes.get(index) + 1) * LANE;
		double from = y(coupling.driver());
		double to = y(coupling.driven());
		double fromEdge = x(coupling.driver()) - diameter(coupling.driver()) / 2;
		double toEdge = x(coupling.driven()) - diameter(coupling.driven()) / 2;
		Path.Recorder arrow = new Path.Recorder();
		arrow.moveTo(toEdge, to);
		arrow.lineTo(toEdge - 1.8, to - 0.8);
		arrow.lineTo(toEdge - 1.8, to + 0.8);
		arrow.close();
		String number = String.valueOf(couplings.get(index) + 1);
		return List.of(line(fromEdge, from, lane, from, 0.25), line(lane, from, lane, to, 0.25),
				line(lane, to, toEdge - 1, to, 0.25), new Drawn(arrow.path(), Style.filled(Ink.BLACK)),
				new Drawn(new Circle(fromEdge - 0.6, from, 0.6), Style.filled(Ink.BLACK)),
				Text.of(number, lane - 0.4, (from + to) / 2 + 0.9, Face.CONDENSED_BOLD, 2.4).anchored(Anchor.END));
	}

	private List<Element> cup(int key) {
		SheetKey drawn = sheet.keys().get(key);
		double radius = diameter(key) / 2;
		List<Element> elements = new ArrayList<>();
		elements.add(new Drawn(new Circle(x(key), y(key), radius),
				Style.of(new SolidFill(Ink.WHITE), Stroke.of(Ink.BLACK, drawn.closedAtRest() ? 0.7 : 0.3))));
		drawn.opening().ifPresent(opening -> elements.add(new Drawn(
				new Circle(x(key), y(key), scale.onPaper(Millimetres.value(opening)) / 2), Style.stroked(Ink.BLACK, 0.2))));
		drawn.hole().ifPresent(hole -> elements.add(new Drawn(
				new Circle(x(key), y(key), scale.onPaper(Millimetres.value(hole)) / 2),
				Style.stroked(Stroke.of(Ink.BLACK, 0.12).dashed(0.5, 0.4)))));
		if (drawn.hole().map(Millimetres::value).map(scale::onPaper).orElse(2 * radius) >= LEAST_FOR_NUMBER) {
			elements.add(Text.centred(String.valueOf(key + 1), x(key), y(key), Face.CONDENSED_BOLD,
					Math.min(2.8, radius * 1.1)));
		}
		return elements;
	}

	/** Keys and finger holes, from the upper end down. */
	private List<Callout> callouts() {
		Stream<Callout> ofKeys = keys.stream().map(key -> {
			SheetKey drawn = sheet.keys().get(key);
			return new Callout(x(key) + diameter(key) / 2, y(key),
					(key + 1) + " " + drawn.label() + (drawn.touch().isEmpty() ? "" : " · " + drawn.touch()),
					!drawn.touch().isEmpty());
		});
		Stream<Callout> ofHoles = fingerHoles().map(hole -> new Callout(nearX() + arc(hole.around()) + radius(hole), y(hole),
				hole.title() + (hole.touch().isEmpty() ? "" : " · " + hole.touch()), !hole.touch().isEmpty()));
		return Stream.concat(ofKeys, ofHoles).sorted(Comparator.comparingDouble(Callout::y)).toList();
	}

	private static Element line(double x1, double y1, double x2, double y2, double width) {
		return new Drawn(new Line(x1, y1, x2, y2), Style.stroked(Ink.BLACK, width));
	}
}
