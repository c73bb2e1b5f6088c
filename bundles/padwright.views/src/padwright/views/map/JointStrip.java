package padwright.views.map;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

import padwright.drawing.scene.Drawn;
import padwright.drawing.scene.Element;
import padwright.drawing.scene.Face;
import padwright.drawing.scene.Line;
import padwright.drawing.scene.Rectangle;
import padwright.drawing.scene.Stroke;
import padwright.drawing.scene.Style;
import padwright.drawing.scene.Text;
import padwright.views.Palette;

/** The keys of one joint at their places along the tube. Keys that hinge on the far side stand aside. */
final class JointStrip {

	/** About as wide as the tube of a flute (from memory); a deeper instrument's cups are only wider than it. */
	private static final double TUBE = 19;
	private static final double BEYOND = 5;
	private static final double ASIDE = 2;
	/** Where positions are not known, cups stand side by side. */
	private static final double APART = 3;
	private static final double HEADING = 4;

	private final String joint;
	private final List<PlacedKey> keys;
	private final List<MapCoupling> couplings;
	private final Axis axis;
	private final Palette palette;
	private final Set<String> selected;

	JointStrip(String joint, List<MapKey> keys, List<MapCoupling> couplings, Axis axis, Palette palette,
			Set<String> selected) {
		this.joint = joint;
		this.keys = place(keys);
		this.couplings = couplings;
		this.axis = axis;
		this.palette = palette;
		this.selected = selected;
	}

	private static List<PlacedKey> place(List<MapKey> keys) {
		double widest = keys.stream().filter(key -> !key.isFar()).mapToDouble(MapKey::cup).max().orElse(TUBE);
		List<PlacedKey> placed = new ArrayList<>();
		List<MapKey> inOrder = Stream.concat(
				keys.stream().filter(key -> key.position().isPresent())
						.sorted(Comparator.comparing(key -> key.position().orElseThrow())),
				keys.stream().filter(key -> key.position().isEmpty())).toList();
		double end = 0;
		for (MapKey key : inOrder) {
			double along = key.position().orElse(end + APART + key.cup() / 2);
			double across = key.isFar() ? -(widest + key.cup()) / 2 - ASIDE : 0;
			placed.add(new PlacedKey(key, along, across));
			end = Math.max(end, along + key.cup() / 2);
		}
		return List.copyOf(placed);
	}

	List<Element> draw() {
		List<Element> elements = new ArrayList<>(tube());
		elements.addAll(new CouplingLines(keys, couplings, axis, palette).draw());
		List<Integer> lanes = PlacedKey.labelLanes(keys, axis);
		for (int index = 0; index < keys.size(); index++) {
			PlacedKey key = keys.get(index);
			boolean chosen = selected.contains(key.key().name());
			elements.add(new KeyDrawing(key, axis, palette, chosen, lanes.get(index)).draw());
		}
		return elements;
	}

	private List<Element> tube() {
		double from = keys.stream().mapToDouble(PlacedKey::start).min().orElse(0) - BEYOND;
		double to = keys.stream().mapToDouble(PlacedKey::end).max().orElse(0) + BEYOND;
		double half = TUBE / 2;
		Rectangle body = axis == Axis.LYING ? new Rectangle(from, -half, to - from, TUBE)
				: new Rectangle(-half, from, TUBE, to - from);
		Stroke edge = Stroke.of(palette.tint(palette.quiet(), 0.7), 0.35);
		Text name = axis == Axis.LYING ? Text.of(joint, from, half + HEADING * 1.25, Face.BOLD, HEADING)
				: Text.of(joint, -half, from - HEADING * 0.5, Face.BOLD, HEADING);
		return List.of(new Drawn(body, Style.filled(palette.tint(palette.quiet(), 0.1))),
				edge(from, to, -half, edge), edge(from, to, half, edge), name.in(palette.quiet()));
	}

	private Element edge(double from, double to, double across, Stroke stroke) {
		return new Drawn(new Line(axis.x(from, across), axis.y(from, across), axis.x(to, across), axis.y(to, across)),
				Style.stroked(stroke));
	}
}
