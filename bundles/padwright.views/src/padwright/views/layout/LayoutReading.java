package padwright.views.layout;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

import padwright.engine.length.Length;
import padwright.model.keysystem.Joint;
import padwright.model.keysystem.KeySystem;
import padwright.model.keysystem.Titled;
import padwright.model.keysystem.Coupling;
import padwright.model.keysystem.Touch;
import padwright.model.systems.EffectiveHole;
import padwright.model.systems.EffectiveJoint;
import padwright.model.systems.EffectiveKey;
import padwright.model.systems.EffectiveRod;
import padwright.model.systems.EffectiveSystem;
import padwright.model.systems.EffectiveTouch;
import padwright.model.systems.Merged;
import padwright.model.Resolved;
import padwright.model.keysystem.Posture;

/** Reads the layout of a system. It bears half-typed systems: what has no name is left out. */
final class LayoutReading {

	private static final Length USUAL_HOLE = Length.millimetres("7");
	private static final Length RIM = Length.millimetres("2.5");
	private static final Length LEVER = Length.millimetres("4");
	private static final Length TOUCH = Length.millimetres("4.5");
	private static final Length ROD = Length.millimetres("20");
	private static final Length CHIMNEY = Length.millimetres("2.5");
	/** A joint whose length is not said reaches so far beyond the last thing on it. */
	private static final Length BEYOND = Length.millimetres("20");
	private static final Length SHORTEST = Length.millimetres("100");

	private final KeySystem system;
	private final EffectiveSystem all;
	private final Map<Joint, LayoutJoint> joints = new HashMap<>();
	private final List<LayoutJoint> inOrder = new ArrayList<>();
	private final List<LayoutItem> items = new ArrayList<>();
	private final Set<LayoutLink> links = new LinkedHashSet<>();

	private LayoutReading(KeySystem system) {
		this.system = system;
		all = EffectiveSystem.of(system);
		all.joints().forEach(this::add);
		if (inOrder.isEmpty()) {
			Length length = reach(Optional.empty());
			inOrder.add(new LayoutJoint(Optional.empty(), "", Length.ZERO, length,
					LayoutJoint.ends(List.of(), 0, length.nanometres() / 1e6)));
		}
		all.holes().stream().filter(LayoutReading::isNamed).forEach(this::add);
		all.keys().stream().filter(LayoutReading::isNamed).forEach(this::add);
		all.rods().stream().filter(LayoutReading::isNamed).forEach(this::add);
		all.touches().stream().filter(LayoutReading::isNamed).forEach(this::add);
	}

	static Layout read(KeySystem system) {
		LayoutReading reading = new LayoutReading(system);
		Set<String> drawn = new LinkedHashSet<>();
		reading.items.removeIf(item -> !drawn.add(item.id()));
		List<LayoutLink> links = reading.links.stream()
				.filter(link -> drawn.contains(link.from()) && drawn.contains(link.to())).toList();
		return new Layout(Optional.of(system), reading.inOrder, reading.items, links, Optional.empty());
	}

	private static boolean isNamed(Merged<?, ?> part) {
		return part.name() != null && !part.name().isBlank();
	}

	private void add(EffectiveJoint joint) {
		Length start = inOrder.isEmpty() ? Length.ZERO : inOrder.get(inOrder.size() - 1).end();
		LayoutJoint placed = LayoutJoint.of(joint, start,
				joint.length().filter(length -> length.signum() > 0).orElseGet(() -> reach(Optional.of(joint))));
		joints.put(joint.definition(), placed);
		inOrder.add(placed);
	}

	/** How far down a joint anything lies, and some more. */
	private Length reach(Optional<EffectiveJoint> joint) {
		Stream<Optional<Length>> places = Stream.of(
				all.keys().stream().filter(key -> key.joint().equals(joint)).map(EffectiveKey::position),
				all.holes().stream().filter(hole -> hole.joint().equals(joint)).map(EffectiveHole::position),
				all.rods().stream().filter(rod -> rod.joint().equals(joint)).map(EffectiveRod::to)).flatMap(each -> each);
		return places.flatMap(Optional::stream).map(BEYOND::plus).reduce(SHORTEST,
				(one, other) -> one.isLongerThan(other) ? one : other);
	}

	private Optional<Length> along(Optional<EffectiveJoint> joint, Optional<Length> position) {
		Length start = joint.map(each -> joints.get(each.definition())).map(LayoutJoint::start).orElse(Length.ZERO);
		return position.map(start::plus);
	}

	private LayoutOrigin origin(Merged<?, ?> part) {
		return LayoutOrigin.of(part, system);
	}

	private void add(EffectiveHole hole) {
		Length diameter = hole.diameter().orElse(USUAL_HOLE);
		items.add(new LayoutItem(LayoutKind.HOLE, hole.definition(), hole.definition(), hole.label(),
				along(hole.joint(), hole.position()), hole.around(), half(diameter), Optional.of(diameter),
				hole.chimney().orElse(CHIMNEY), false, origin(hole)));
		hole.touches().forEach(touch -> link(touch, "hole:" + hole.name(), LayoutLink.Kind.PRESSES));
	}

	private void add(EffectiveKey key) {
		LayoutKind kind = key.isLever() ? LayoutKind.LEVER
				: key.over().isPresent() ? LayoutKind.CUP : LayoutKind.KEY;
		Length cup = key.cupDiameter().or(() -> key.holeDiameter().map(RIM::plus)).orElse(USUAL_HOLE);
		boolean isOnHole = kind == LayoutKind.CUP && key.features().stream().allMatch(each -> each.getPosition() == null);
		Titled placed = isOnHole ? key.over().orElseThrow().definition() : key.definition();
		items.add(new LayoutItem(kind, key.definition(), placed, key.label(), along(key.joint(), key.position()),
				key.around(), kind == LayoutKind.LEVER ? LEVER : half(cup), key.holeDiameter(),
				key.chimney().orElse(CHIMNEY), !key.isLever() && key.posture() == Posture.CLOSED, origin(key)));
		String id = "key:" + key.name();
		key.touches().forEach(touch -> link(touch, id, LayoutLink.Kind.PRESSES));
		key.closes().forEach(coupling -> link(id, coupling, LayoutLink.Kind.CLOSES));
		key.opens().forEach(coupling -> link(id, coupling, LayoutLink.Kind.OPENS));
		key.holds().forEach(coupling -> link(id, coupling, LayoutLink.Kind.HOLDS));
	}

	private void link(Touch touch, String to, LayoutLink.Kind kind) {
		Resolved.of(touch).ifPresent(there -> links.add(new LayoutLink("touch:" + there.getName(), to, kind)));
	}

	private void link(String from, Coupling coupling, LayoutLink.Kind kind) {
		Resolved.of(coupling.getDriven()).ifPresent(key -> links.add(new LayoutLink(from, "key:" + key.getName(), kind)));
	}

	private void add(EffectiveRod rod) {
		Optional<Length> from = along(rod.joint(), rod.from());
		Optional<Length> to = along(rod.joint(), rod.to());
		Length reach = from.flatMap(upper -> to.map(lower -> half(lower.minus(upper).abs()))).orElse(ROD);
		items.add(new LayoutItem(LayoutKind.ROD, rod.definition(), rod.definition(), rod.label(),
				from.map(reach::plus).or(() -> to.map(lower -> lower.minus(reach))),
				rod.around().orElse(BigDecimal.ZERO), reach, Optional.empty(), CHIMNEY, false, origin(rod)));
	}

	private void add(EffectiveTouch touch) {
		items.add(new LayoutItem(LayoutKind.TOUCH, touch.definition(), touch.definition(), touch.label(),
				along(touch.joint(), touch.position()), touch.around(), TOUCH, Optional.empty(), CHIMNEY, false,
				origin(touch)));
	}

	private static Length half(Length whole) {
		return Length.ofNanometres(whole.nanometres() / 2);
	}
}
