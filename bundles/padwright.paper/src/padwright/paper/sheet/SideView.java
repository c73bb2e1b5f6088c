package padwright.paper.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;

import padwright.drawing.layout.Lanes;
import padwright.drawing.scene.Anchor;
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
import padwright.paper.words.Messages;

/**
 * One joint from the side, at the scale of its map and level with it: the bore, chimneys, cups at their angle as they
 * are seen from the player's side, the top of the tube on the right, rods between their posts; and on the left the chain
 * of distances from hole to hole. What lies on the far side is grey.
 */
final class SideView {

	private static final double CHAIN = 14;
	private static final double DIGIT = 2.3;
	private static final double GAP = 3;
	/** A cup whose depth is not said. */
	private static final Length USUAL_DEPTH = Length.millimetres("3");
	private static final Ink FAR = Ink.grey(150);

	private final SheetJoint joint;
	private final DrawingScale scale;
	private final List<SheetKey> keys;
	private final List<SheetFingerHole> fingerHoles;
	private final List<SheetRod> rods;

	SideView(LayoutSheet sheet, SheetJoint joint, DrawingScale scale) {
		this.joint = joint;
		this.scale = scale;
		this.keys = sheet.keys().stream()
				.filter(key -> key.joint().equals(joint.name()) && key.position().isPresent() && !key.isLever()).toList();
		this.rods = sheet.rods().stream().filter(rod -> rod.joint().equals(joint.name())).toList();
		this.fingerHoles = sheet.fingerHoles().stream().filter(hole -> hole.joint().equals(joint.name())).toList();
	}

	/** Whether there is nothing on the joint, and nothing is known of the joint. */
	boolean isEmpty() {
		return places().isEmpty() && joint.length().isEmpty();
	}

	double width() {
		return CHAIN + 2 * reach() + GAP + fromAbove();
	}

	/** Room for the embouchure hole as it is seen from above, mm on paper. */
	private double fromAbove() {
		return joint.embouchure().map(hole -> scale.onPaper(Millimetres.value(hole.width())) + GAP).orElse(0.0);
	}

	/** What reaches furthest down, mm on paper. */
	double height() {
		List<Double> labels = labelPlaces();
		return Math.max(Math.max(lowest(), y(ends().get(1))), labels.isEmpty() ? 0 : labels.get(labels.size() - 1)) + GAP;
	}

	private double lowest() {
		return places().stream().mapToDouble(this::y).max().orElse(0) + widest() / 2;
	}

	private double widest() {
		return keys.stream().mapToDouble(this::diameter).max().orElse(0);
	}

	/** From the middle of the bore to what stands off furthest. */
	private double reach() {
		double cups = keys.stream().mapToDouble(key -> radius(key.position().orElseThrow()) + chimney(key) + depth(key)
				+ diameter(key) / 2 * Math.abs(Math.sin(Math.toRadians(key.around())))).max().orElse(0);
		double axes = rods.stream().flatMap(rod -> Stream.of(rod.from(), rod.to())).mapToDouble(this::axis).max().orElse(0);
		double lip = joint.embouchure().map(hole -> radius(hole.position()) + plate(hole)).orElse(0.0);
		return Math.max(Math.max(Math.max(cups, axes), lip), stations().stream().mapToDouble(this::radius).max().orElse(0)) + GAP;
	}

	private double middle() {
		return CHAIN + reach();
	}

	private double y(Length place) {
		return JointMap.TOP + scale.onPaper(Millimetres.value(place));
	}

	private double radius(Length place) {
		return scale.onPaper(joint.across(place)) / 2;
	}

	private double plate(SheetEmbouchure hole) {
		return scale.onPaper(hole.chimney().map(Millimetres::value).orElse(0.0));
	}

	private double diameter(SheetKey key) {
		return scale.onPaper(key.cup().or(key::hole).map(Millimetres::value).orElse(0.0));
	}

	private double chimney(SheetKey key) {
		return scale.onPaper(key.chimney().map(Millimetres::value).orElse(0.0));
	}

	private double depth(SheetKey key) {
		return key.cup().isEmpty() ? 0 : scale.onPaper(Millimetres.value(key.depth().orElse(USUAL_DEPTH)));
	}

	List<Element> draw() {
		List<Element> elements = new ArrayList<>(tube());
		rods.forEach(rod -> elements.addAll(rod(rod)));
		keys.stream().sorted((one, other) -> Boolean.compare(isNear(one.around()), isNear(other.around())))
				.forEach(key -> elements.addAll(key(key)));
		fingerHoles.forEach(hole -> elements.add(drum(hole.around(), y(hole.position()), radius(hole.position()), 0,
				scale.onPaper(hole.diameter().map(Millimetres::value).orElse(7.0)), 0.25)));
		joint.embouchure().ifPresent(hole -> elements.addAll(embouchure(hole)));
		elements.addAll(chain());
		return elements;
	}

	/** How far from the middle of the bore a rod lies: as high as the rims, since nothing says how high its posts are. */
	private double axis(Length place) {
		return radius(place) + keys.stream().mapToDouble(this::chimney).max().orElse(0);
	}

	private List<Element> rod(SheetRod rod) {
		double up = Math.cos(Math.toRadians(rod.around()));
		double upperX = middle() + axis(rod.from()) * up;
		double lowerX = middle() + axis(rod.to()) * up;
		return SheetPosts.rod(upperX, y(rod.from()), lowerX, y(rod.to()), isNear(rod.around()) ? SheetPosts.NEAR : FAR);
	}

	/** The hole from the side and beside it from above, and the face of the cork. */
	private List<Element> embouchure(SheetEmbouchure hole) {
		List<Element> elements = new ArrayList<>();
		elements.add(drum(0, y(hole.position()), radius(hole.position()), Math.max(0.3, plate(hole)),
				scale.onPaper(Millimetres.value(hole.length())), 0.25));
		double across = scale.onPaper(Millimetres.value(hole.width())) / 2;
		elements.add(new Drawn(Ellipse.about(middle() + reach() + across, y(hole.position()), across,
				scale.onPaper(Millimetres.value(hole.length())) / 2), Style.stroked(Ink.BLACK, 0.25)));
		hole.cork().filter(cork -> cork.compareTo(hole.position()) <= 0).ifPresent(cork -> {
			Length face = hole.position().minus(cork);
			elements.add(new Drawn(new Line(middle() - radius(face), y(face), middle() + radius(face), y(face)),
					Style.stroked(Ink.BLACK, 0.6)));
		});
		return elements;
	}

	private List<Element> tube() {
		List<Length> ends = ends();
		Path.Recorder outline = new Path.Recorder();
		List<Length> stations = stations();
		outline.moveTo(middle() + radius(stations.get(0)), y(stations.get(0)));
		stations.stream().skip(1).forEach(place -> outline.lineTo(middle() + radius(place), y(place)));
		for (int index = stations.size() - 1; index >= 0; index--) {
			outline.lineTo(middle() - radius(stations.get(index)), y(stations.get(index)));
		}
		outline.close();
		return List.of(new Drawn(outline.path(), Style.of(new SolidFill(Ink.grey(244)), Stroke.of(Ink.BLACK, 0.25))),
				new Drawn(new Line(middle(), y(ends.get(0)), middle(), y(ends.get(1))),
						Style.stroked(Stroke.of(Ink.grey(120), 0.1).dashed(3, 1))));
	}

	/** Where the outline of the tube can bend. */
	private List<Length> stations() {
		List<Length> ends = ends();
		return Stream.concat(ends.stream(), joint.bore().stream().map(SheetBore::position))
				.filter(place -> place.compareTo(ends.get(1)) <= 0).distinct().sorted().toList();
	}

	/** The upper end, and the lower one or, where the length is not said, the last hole. */
	private List<Length> ends() {
		List<Length> places = places();
		return List.of(Length.ZERO, places.isEmpty() ? Length.ZERO : places.get(places.size() - 1));
	}

	private static boolean isNear(double around) {
		return Math.sin(Math.toRadians(around)) >= -0.01;
	}

	private List<Element> key(SheetKey key) {
		double y = y(key.position().orElseThrow());
		double foot = radius(key.position().orElseThrow());
		List<Element> elements = new ArrayList<>();
		if (chimney(key) > 0) {
			elements.add(drum(key.around(), y, foot, chimney(key),
					scale.onPaper(key.hole().or(key::cup).map(Millimetres::value).orElse(0.0)), 0.2));
		}
		elements.add(drum(key.around(), y, foot + chimney(key), depth(key), diameter(key), key.closedAtRest() ? 0.5 : 0.25));
		return elements;
	}

	/** A round thing that stands on the tube, as it looks from the side. */
	private Element drum(double around, double y, double foot, double high, double wide, double stroke) {
		double up = Math.cos(Math.toRadians(around));
		double half = wide / 2;
		double aside = half * Math.abs(Math.sin(Math.toRadians(around)));
		double from = middle() + foot * up;
		double to = middle() + (foot + high) * up;
		Path.Recorder shape = new Path.Recorder();
		shape.moveTo(from, y - half);
		shape.lineTo(to, y - half);
		shape.curveTo(to + aside * Ellipse.HANDLE, y - half, to + aside, y - half * Ellipse.HANDLE, to + aside, y);
		shape.curveTo(to + aside, y + half * Ellipse.HANDLE, to + aside * Ellipse.HANDLE, y + half, to, y + half);
		shape.lineTo(from, y + half);
		shape.curveTo(from - aside * Ellipse.HANDLE, y + half, from - aside, y + half * Ellipse.HANDLE, from - aside, y);
		shape.curveTo(from - aside, y - half * Ellipse.HANDLE, from - aside * Ellipse.HANDLE, y - half, from, y - half);
		shape.close();
		return new Drawn(shape.path(),
				Style.of(new SolidFill(Ink.WHITE), Stroke.of(isNear(around) ? Ink.BLACK : FAR, stroke)));
	}

	/** Places of all holes and, where it is said, of the lower end, from the upper end down, each once. */
	private List<Length> places() {
		return Stream.of(keys.stream().flatMap(key -> key.position().stream()),
				fingerHoles.stream().map(SheetFingerHole::position),
				joint.embouchure().stream().map(SheetEmbouchure::position), joint.length().stream())
				.flatMap(places -> places).distinct().sorted().toList();
	}

	private List<Double> labelPlaces() {
		List<Length> places = places();
		return Lanes.spread(IntStream.range(0, places.size()).mapToObj(index -> (y(places.get(index))
				+ y(index == 0 ? Length.ZERO : places.get(index - 1))) / 2).toList(), DIGIT * 1.15);
	}

	/** From the upper end to the first hole, from each to the next, and to the lower end. */
	private List<Element> chain() {
		List<Element> elements = new ArrayList<>();
		List<Length> places = places();
		List<Double> labels = labelPlaces();
		double x = CHAIN - 4;
		elements.add(line(x, y(Length.ZERO), x, y(places.get(places.size() - 1))));
		elements.add(line(x - 1, y(Length.ZERO), x + 1, y(Length.ZERO)));
		for (int index = 0; index < places.size(); index++) {
			Length step = index == 0 ? places.get(0) : places.get(index).minus(places.get(index - 1));
			elements.add(line(x - 1, y(places.get(index)), x + 1, y(places.get(index))));
			elements.add(Text.of(Millimetres.of(step), x - 1.6, labels.get(index) + DIGIT * 0.36, Face.CONDENSED, DIGIT)
					.anchored(Anchor.END));
		}
		return elements;
	}

	private static Element line(double x1, double y1, double x2, double y2) {
		return new Drawn(new Line(x1, y1, x2, y2), Style.stroked(Ink.BLACK, 0.12));
	}

	/** What it shows, for whoever cannot see it. */
	String description() {
		return Messages.of("sheet.side", joint.name());
	}
}
