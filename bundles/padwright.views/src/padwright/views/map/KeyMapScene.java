package padwright.views.map;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import padwright.drawing.scene.Bounds;
import padwright.drawing.scene.Element;
import padwright.drawing.scene.Face;
import padwright.drawing.scene.Group;
import padwright.drawing.scene.Scene;
import padwright.drawing.scene.Text;
import padwright.views.Messages;
import padwright.views.Palette;
import padwright.views.scenes.Extent;

/**
 * The map of an instrument, life-size in mm. The joints lie in one line, or each in a line of its own, along the window
 * or down it: whatever shows the cups largest.
 */
public final class KeyMapScene {

	private static final double MARGIN = 6;
	private static final double BETWEEN = 7;

	private final KeyMapState state;
	private final Palette palette;
	private final Set<String> selected;

	private KeyMapScene(KeyMapState state, Palette palette, Set<String> selected) {
		this.state = state;
		this.palette = palette;
		this.selected = selected;
	}

	/**
	 * The map for a window of this shape.
	 *
	 * @param selected names of keys
	 * @param aspect width of the window over its height
	 */
	public static Scene draw(KeyMapState state, Palette palette, Set<String> selected, double aspect) {
		KeyMapScene map = new KeyMapScene(state, palette, selected);
		return map.joints().isEmpty() ? map.nothing(aspect)
				: map.layouts().reduce((best, next) -> room(next, aspect) < room(best, aspect) ? next : best)
						.orElseThrow();
	}

	private Scene nothing(double aspect) {
		Text text = Text.centred(Messages.of("map.empty"), 60, 60 / aspect, Face.REGULAR, 4).in(palette.quiet());
		return new Scene(state.title(), 120, 120 / aspect, List.of(text));
	}

	/** How large the window would have to be at one point to the mm. */
	private static double room(Scene scene, double aspect) {
		return Math.max(scene.width() / aspect, scene.height());
	}

	private Stream<Scene> layouts() {
		return Stream.of(Axis.values())
				.flatMap(axis -> Stream.of(true, false).map(inOneLine -> layout(axis, inOneLine)));
	}

	private Scene layout(Axis axis, boolean inOneLine) {
		Map<String, List<MapKey>> joints = joints();
		boolean besideOneAnother = (axis == Axis.LYING) == inOneLine;
		List<Element> placed = new ArrayList<>();
		double x = MARGIN;
		double y = MARGIN;
		for (Map.Entry<String, List<MapKey>> joint : joints.entrySet()) {
			List<MapKey> keys = joint.getValue();
			Group strip = Group.of(
					new JointStrip(state.joint(joint.getKey()), keys, inside(keys), axis, palette, selected).draw());
			Bounds room = Extent.of(List.of(strip)).orElseThrow();
			placed.add(strip.at(x - room.left(), y - room.top()));
			x += besideOneAnother ? room.width() + BETWEEN : 0;
			y += besideOneAnother ? 0 : room.height() + BETWEEN;
		}
		Bounds strips = Extent.of(placed).orElseThrow();
		Legend legend = new Legend(states(), palette, Math.max(strips.right(), 60));
		placed.add(legend.draw().at(MARGIN, strips.bottom() + MARGIN));
		Bounds all = Extent.of(placed).orElseThrow();
		return new Scene(state.title(), all.right() + MARGIN, all.bottom() + MARGIN, placed);
	}

	/** Keys by the names of their joints, and no key for one that has finger holes alone. */
	private Map<String, List<MapKey>> joints() {
		Map<String, List<MapKey>> joints = new LinkedHashMap<>();
		state.joints().stream().filter(joint -> !joint.holes().isEmpty() || state.keys().stream()
				.anyMatch(key -> key.joint().equals(joint.name()))).forEach(joint -> joints.put(joint.name(), new ArrayList<>()));
		state.keys().forEach(key -> joints.computeIfAbsent(key.joint(), unknown -> new ArrayList<>()).add(key));
		return joints;
	}

	/** Couplings between joints cannot be drawn in one strip; a key's own words name them. */
	private List<MapCoupling> inside(List<MapKey> keys) {
		Set<String> names = keys.stream().map(MapKey::name).collect(Collectors.toSet());
		return state.couplings().stream()
				.filter(coupling -> names.contains(coupling.driver()) && names.contains(coupling.driven())).toList();
	}

	private Collection<KeyState> states() {
		return state.keys().stream().map(MapKey::state).sorted().distinct().toList();
	}
}
