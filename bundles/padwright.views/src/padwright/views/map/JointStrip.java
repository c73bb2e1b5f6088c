package padwright.views.map;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;

import padwright.drawing.scene.Anchor;
import padwright.drawing.scene.Circle;
import padwright.drawing.scene.Drawn;
import padwright.drawing.scene.Element;
import padwright.drawing.scene.Face;
import padwright.drawing.scene.Line;
import padwright.drawing.scene.Rectangle;
import padwright.drawing.scene.Stroke;
import padwright.drawing.scene.Style;
import padwright.drawing.scene.Group;
import padwright.drawing.scene.SolidFill;
import padwright.drawing.scene.Text;
import padwright.drawing.scene.Transform;
import padwright.views.Palette;

/**
 * The keys and rods of one joint at their places along the tube and around it, its surface unrolled. Keys that hinge on
 * the far side of which no angle is said stand aside.
 */
final class JointStrip {

	private static final double ROD = 0.7;
	private static final double POST = 2.4;
	private static final double HOLE = 0.5;
	private static final double TOUCH = 4.2;
	private static final double BEYOND = 5;
	private static final double ASIDE = 2;
	/** Where positions are not known, cups stand side by side. */
	private static final double APART = 3;
	private static final double HEADING = 4;

	private final MapJoint joint;
	private final List<PlacedKey> keys;
	private final List<MapCoupling> couplings;
	private final Axis axis;
	private final Palette palette;
	private final Set<String> selected;

	JointStrip(MapJoint joint, List<MapKey> keys, List<MapCoupling> couplings, Axis axis, Palette palette,
			Set<String> selected) {
		this.joint = joint;
		this.keys = place(keys);
		this.couplings = couplings;
		this.axis = axis;
		this.palette = palette;
		this.selected = selected;
	}

	private List<PlacedKey> place(List<MapKey> keys) {
		double widest = keys.stream().filter(key -> !key.isFar()).mapToDouble(MapKey::cup).max().orElse(joint.bore());
		List<PlacedKey> placed = new ArrayList<>();
		List<MapKey> inOrder = Stream.concat(
				keys.stream().filter(key -> key.position().isPresent())
						.sorted(Comparator.comparing(key -> key.position().orElseThrow())),
				keys.stream().filter(key -> key.position().isEmpty())).toList();
		double end = 0;
		for (MapKey key : inOrder) {
			double along = key.position().orElse(end + APART + key.cup() / 2);
			double across = key.isFar() ? -(widest + key.cup()) / 2 - ASIDE : joint.across(key.around());
			placed.add(new PlacedKey(key, along, across));
			end = Math.max(end, along + key.cup() / 2);
		}
		return List.copyOf(placed);
	}

	List<Element> draw() {
		List<Element> elements = new ArrayList<>(tube());
		joint.rods().forEach(rod -> elements.addAll(rod(rod)));
		joint.holes().forEach(hole -> elements.add(hole(hole)));
		elements.addAll(new CouplingLines(keys, couplings, axis, palette).draw());
		List<Integer> lanes = PlacedKey.labelLanes(keys, axis);
		for (int index = 0; index < keys.size(); index++) {
			PlacedKey key = keys.get(index);
			boolean chosen = selected.contains(key.key().name());
			elements.add(new KeyDrawing(key, axis, palette, chosen, lanes.get(index)).draw());
		}
		return elements;
	}

	/** From post to post. */
	private List<Element> rod(MapJoint.Rod rod) {
		double across = joint.across(rod.around());
		return List.of(edge(rod.from(), rod.to(), across, Stroke.of(palette.quiet(), ROD)), post(rod.from(), across),
				post(rod.to(), across));
	}

	/** With the touch that covers it beside it. */
	private Element hole(MapJoint.FingerHole hole) {
		double across = joint.across(hole.around());
		double x = axis.x(hole.position(), across);
		double y = axis.y(hole.position(), across);
		double away = hole.diameter() / 2 + TOUCH * 0.5;
		Text touch = axis == Axis.LYING ? Text.centred(hole.touch(), x, y + away, Face.CONDENSED, TOUCH)
				: Text.centred(hole.touch(), x + away, y, Face.CONDENSED, TOUCH).anchored(Anchor.START);
		return new Group(Optional.empty(), Optional.of(hole.detail()), Transform.NONE, List.of(
				new Drawn(new Circle(x, y, hole.diameter() / 2), Style.of(new SolidFill(palette.ground()), Stroke.of(palette.ink(), HOLE))),
				touch.in(palette.ink())));
	}

	private Element post(double along, double across) {
		return new Drawn(new Rectangle(axis.x(along, across) - POST / 2, axis.y(along, across) - POST / 2, POST, POST),
				Style.filled(palette.quiet()));
	}

	private List<Element> tube() {
		double from = DoubleStream.concat(keys.stream().mapToDouble(PlacedKey::start),
				joint.holes().stream().mapToDouble(hole -> hole.position() - hole.diameter() / 2)).min().orElse(0) - BEYOND;
		double to = DoubleStream.concat(keys.stream().mapToDouble(PlacedKey::end),
				joint.holes().stream().mapToDouble(hole -> hole.position() + hole.diameter() / 2)).max().orElse(0) + BEYOND;
		double half = joint.bore() / 2;
		Rectangle body = axis == Axis.LYING ? new Rectangle(from, -half, to - from, joint.bore())
				: new Rectangle(-half, from, joint.bore(), to - from);
		Stroke edge = Stroke.of(palette.tint(palette.quiet(), 0.7), 0.35);
		Text name = axis == Axis.LYING ? Text.of(joint.name(), from, half + HEADING * 1.25, Face.BOLD, HEADING)
				: Text.of(joint.name(), -half, from - HEADING * 0.5, Face.BOLD, HEADING);
		return List.of(new Drawn(body, Style.filled(palette.tint(palette.quiet(), 0.1))),
				edge(from, to, -half, edge), edge(from, to, half, edge), name.in(palette.quiet()));
	}

	private Element edge(double from, double to, double across, Stroke stroke) {
		return new Drawn(new Line(axis.x(from, across), axis.y(from, across), axis.x(to, across), axis.y(to, across)),
				Style.stroked(stroke));
	}
}
