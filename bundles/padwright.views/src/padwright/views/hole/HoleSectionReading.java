package padwright.views.hole;

import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

import padwright.engine.length.Length;
import padwright.model.keysystem.HingeSide;
import padwright.model.keysystem.Hole;
import padwright.model.keysystem.Key;
import padwright.model.keysystem.Titled;
import padwright.model.systems.EffectiveHole;
import padwright.model.systems.EffectiveJoint;
import padwright.model.systems.EffectiveKey;
import padwright.model.systems.EffectiveSystem;
import padwright.views.Figures;
import padwright.views.layout.Layout;
import padwright.views.layout.LayoutItem;
import padwright.views.layout.LayoutKind;
import padwright.views.layout.LayoutOrigin;

/** Reads the section through a hole from a system with all that it inherits. */
final class HoleSectionReading {

	/** How much wider than its hole a cup is drawn where it is not known (invented). */
	private static final Length WIDER = Length.millimetres("3.5");
	/** How far beside its cup a rod is drawn where it is not known (invented). */
	private static final Length BESIDE = Length.millimetres("4");
	private static final long TENTH = 100_000;

	private final Layout layout;
	private final LayoutItem item;
	private final EffectiveSystem all;
	private final Map<HoleSize, HoleMeasure> sizes = new EnumMap<>(HoleSize.class);

	private HoleSectionReading(Layout layout, LayoutItem item) {
		this.layout = layout;
		this.item = item;
		all = EffectiveSystem.of(layout.system().orElseThrow());
	}

	/** A hole under a cup is shown with that. */
	static List<LayoutItem> holes(Layout layout) {
		Set<Titled> covered = layout.items().stream().filter(item -> item.kind() == LayoutKind.CUP)
				.map(LayoutItem::placed).collect(Collectors.toSet());
		return layout.items().stream().filter(item -> item.along().isPresent())
				.filter(item -> item.kind() == LayoutKind.KEY || item.kind() == LayoutKind.CUP
						|| item.kind() == LayoutKind.HOLE && !covered.contains(item.thing()))
				.sorted(Comparator.comparing(item -> item.along().orElseThrow())).toList();
	}

	static Optional<HoleSection> of(Layout layout, LayoutItem chosen) {
		return holes(layout).stream().filter(item -> item.id().equals(chosen.id()) || item.placed() == chosen.thing())
				.findFirst().flatMap(item -> new HoleSectionReading(layout, item).section());
	}

	private Optional<HoleSection> section() {
		return item.thing() instanceof Key key ? all.key(key).map(this::section)
				: all.hole((Hole) item.thing()).map(this::section);
	}

	private HoleSection section(EffectiveHole hole) {
		bore();
		hole(hole.diameter(), hole.rimWidth(), hole.chimney(), item.origin());
		return new HoleSection(layout, item, hole.definition(), sizes, hole.undercut().orElse(Length.ZERO), false,
				Optional.empty());
	}

	private HoleSection section(EffectiveKey key) {
		bore();
		LayoutOrigin holeOrigin = key.over().flatMap(over -> layout.item("hole:" + over.name()))
				.map(LayoutItem::origin).orElse(item.origin());
		hole(key.holeDiameter(), key.rimWidth(), key.chimney(), holeOrigin);
		Length wide = key.cupDiameter().orElseGet(() -> sizes.get(HoleSize.HOLE).length().plus(WIDER));
		sizes.put(HoleSize.CUP, new HoleMeasure(wide, key.cupDiameter().isPresent(), true, item.origin()));
		add(HoleSize.DEPTH, key.cupDepth(), item.origin());
		add(HoleSize.RISE, key.rise(), item.origin());
		Length usualArm = Length.ofNanometres(wide.nanometres() / 2 / TENTH * TENTH).plus(BESIDE);
		sizes.put(HoleSize.ARM, new HoleMeasure(key.arm().orElse(usualArm), key.arm().isPresent(), true, item.origin()));
		Optional<String> rod = all.rods().stream().filter(each -> each.bearings().stream()
				.anyMatch(bearing -> bearing.getKey() == key.definition())).map(each -> each.label()).findFirst();
		Titled hole = key.over().<Titled>map(EffectiveHole::definition).orElse(key.definition());
		return new HoleSection(layout, item, hole, sizes, key.undercut().orElse(Length.ZERO),
				key.hinge().filter(HingeSide.FAR::equals).isPresent(), rod);
	}

	/** Where the bore has points without a place, no one figure says how wide it is here. */
	private void bore() {
		double wide = layout.jointAt(item.along().orElseThrow()).widthAt(Figures.mm(item.along().orElseThrow()));
		Optional<EffectiveJoint> joint = layout.jointAt(item.along().orElseThrow()).joint().flatMap(all::joint);
		List<EffectiveJoint.Width> said = joint.map(EffectiveJoint::bore).orElse(List.of());
		boolean isEditable = joint.isPresent()
				&& (said.size() < 2 || said.stream().allMatch(width -> width.position().isPresent()));
		LayoutOrigin origin = joint.map(each -> LayoutOrigin.of(each, layout.system().orElseThrow()))
				.orElse(LayoutOrigin.OWN);
		sizes.put(HoleSize.BORE, new HoleMeasure(Length.ofNanometres(Math.round(wide * 10) * TENTH), !said.isEmpty(),
				isEditable, origin));
	}

	private void hole(Optional<Length> diameter, Optional<Length> rim, Optional<Length> chimney, LayoutOrigin origin) {
		add(HoleSize.HOLE, diameter, origin);
		add(HoleSize.RIM, rim, origin);
		add(HoleSize.CHIMNEY, chimney, origin);
	}

	private void add(HoleSize size, Optional<Length> said, LayoutOrigin origin) {
		sizes.put(size, new HoleMeasure(said.orElseGet(() -> Length.millimetres(size.usual())), said.isPresent(), true,
				origin));
	}
}
