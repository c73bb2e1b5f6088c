package padwright.paper.system;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import padwright.engine.length.Length;
import padwright.model.Lengths;
import padwright.model.Measure;
import padwright.model.Resolved;
import padwright.model.keysystem.Bearing;
import padwright.model.keysystem.Coupling;
import padwright.model.keysystem.Embouchure;
import padwright.model.keysystem.Touch;
import padwright.model.systems.EffectiveHole;
import padwright.model.systems.EffectiveJoint;
import padwright.model.systems.EffectiveKey;
import padwright.model.systems.EffectiveRod;
import padwright.model.systems.EffectiveSystem;
import padwright.model.systems.EffectiveTouch;
import padwright.paper.sheet.SheetBore;
import padwright.paper.sheet.SheetEmbouchure;
import padwright.paper.sheet.SheetFingerHole;
import padwright.paper.sheet.SheetJoint;
import padwright.paper.sheet.SheetList;
import padwright.paper.sheet.SheetRod;
import padwright.paper.words.Messages;
import padwright.workup.report.Figures;
import padwright.workup.words.LengthWords;

/** Joints, holes by themselves, touches and rods of a system, as tables; lengths in millimetres. */
final class SheetTables {

	private final EffectiveSystem system;
	private final List<Coupling> couplings;
	private final SheetList revisions;

	/** @param couplings in the order of their numbers */
	SheetTables(EffectiveSystem system, List<Coupling> couplings, SheetList revisions) {
		this.system = system;
		this.couplings = couplings;
		this.revisions = revisions;
	}

	List<SheetJoint> joints() {
		return system.joints().stream().map(joint -> new SheetJoint(joint.label(), joint.length(),
				joint.bore().stream().map(EffectiveJoint.Width::diameter).reduce((upper, lower) -> lower), bore(joint),
				joint.embouchure().flatMap(hole -> embouchure(hole, joint.cork())))).toList();
	}

	private static Optional<SheetEmbouchure> embouchure(Embouchure hole, Optional<Length> cork) {
		return length(hole, hole.getPosition()).flatMap(at -> length(hole, hole.getLength())
				.flatMap(along -> length(hole, hole.getWidth())
						.map(across -> new SheetEmbouchure(at, along, across, length(hole, hole.getChimney()), cork))));
	}

	private static Optional<Length> length(Embouchure hole, Measure measure) {
		return Optional.ofNullable(measure).flatMap(said -> Lengths.of(said, hole));
	}

	private static List<SheetBore> bore(EffectiveJoint joint) {
		return joint.bore().stream()
				.flatMap(point -> point.position().map(at -> new SheetBore(at, point.diameter())).stream()).toList();
	}

	/** Those with both posts. */
	List<SheetRod> rods() {
		return system.rods().stream().flatMap(rod -> rod.from().flatMap(from -> rod.to()
				.map(to -> new SheetRod(joint(rod.joint()), from, to, rod.around().map(Number::doubleValue).orElse(0.0))))
				.stream()).toList();
	}

	/** Those with a place that no key is over. */
	List<SheetFingerHole> fingerHoles() {
		return system.holes().stream().filter(hole -> system.keys().stream().flatMap(key -> key.over().stream())
				.noneMatch(covered -> covered.definition() == hole.definition()))
				.flatMap(hole -> hole.position().map(at -> new SheetFingerHole(hole.name(), hole.label(),
						names(hole.touches().stream()), joint(hole.joint()), at,
						hole.around().doubleValue(), hole.diameter(), hole.rimWidth(), hole.chimney(),
						hole.undercut())).stream()).toList();
	}

	List<SheetList> all() {
		return List.of(jointTable(), holeTable(), touchTable(), rodTable(), PartsList.of(system, couplings), revisions);
	}

	private SheetList jointTable() {
		return new SheetList(Messages.of("sheet.joints"), heads("joint", "long", "bore", "embouchure", "cork"),
				system.joints().stream().map(joint -> List.of(joint.label(),
						millimetres(joint.length()), joint.bore().stream().map(SheetTables::width)
								.collect(Collectors.joining(", ")),
						joint.embouchure().map(SheetTables::embouchure).orElse(""), millimetres(joint.cork()))).toList());
	}

	private static String width(EffectiveJoint.Width width) {
		return millimetres(Optional.of(width.diameter()))
				+ width.position().map(at -> " " + Messages.of("sheet.at", millimetres(Optional.of(at)))).orElse("");
	}

	private static String embouchure(Embouchure hole) {
		String size = Messages.of("sheet.size", millimetres(hole, hole.getLength()), millimetres(hole, hole.getWidth()));
		String chimney = hole.getChimney() == null ? ""
				: ", " + Messages.of("sheet.chimney") + " " + millimetres(hole, hole.getChimney());
		return size + chimney + (hole.getPosition() == null ? ""
				: ", " + Messages.of("sheet.at", millimetres(hole, hole.getPosition())));
	}

	private SheetList holeTable() {
		return new SheetList(Messages.of("sheet.holes"),
				heads("hole", "called", "diameter", "rim", "chimney", "undercut", "finger", "joint", "position", "around"),
				system.holes().stream().map(this::hole).toList());
	}

	private List<String> hole(EffectiveHole hole) {
		return List.of(hole.name(), hole.label().equals(hole.name()) ? "" : hole.label(), millimetres(hole.diameter()), millimetres(hole.rimWidth()),
				millimetres(hole.chimney()), millimetres(hole.undercut()), names(hole.touches().stream()),
				joint(hole.joint()), millimetres(hole.position()), Figures.plain(hole.around()) + "°");
	}

	private SheetList touchTable() {
		return new SheetList(Messages.of("sheet.touches"), heads("touch", "called", "finger", "presses", "covers"),
				system.touches().stream().map(this::touch).toList());
	}

	private List<String> touch(EffectiveTouch touch) {
		Touch definition = touch.definition();
		return List.of(touch.name(), touch.label().equals(touch.name()) ? "" : touch.label(), touch.finger(),
				system.keys().stream().filter(key -> key.touches().contains(definition)).map(EffectiveKey::label)
						.collect(Collectors.joining(", ")),
				system.holes().stream().filter(hole -> hole.touches().contains(definition)).map(EffectiveHole::label)
						.collect(Collectors.joining(", ")));
	}

	private SheetList rodTable() {
		return new SheetList(Messages.of("sheet.rods"), heads("rod", "joint", "from", "to", "around", "carries"),
				system.rods().stream().map(this::rod).toList());
	}

	private List<String> rod(EffectiveRod rod) {
		return List.of(rod.label(), joint(rod.joint()), millimetres(rod.from()), millimetres(rod.to()),
				rod.around().map(around -> Figures.plain(around) + "°").orElse(""), rod.bearings().stream()
						.map(this::bearing).collect(Collectors.joining(", ")));
	}

	private String bearing(Bearing bearing) {
		String key = PartsList.label(bearing, system);
		return bearing.isPinned() ? Messages.of("sheet.pinned", key) : key;
	}

	private static List<String> heads(String... keys) {
		return Stream.of(keys).map(key -> Messages.of("sheet." + key)).toList();
	}

	private static String joint(Optional<EffectiveJoint> joint) {
		return joint.map(EffectiveJoint::label).orElse("");
	}

	private static String names(Stream<Touch> touches) {
		return touches.flatMap(touch -> Resolved.of(touch).stream()).map(Touch::getName).collect(Collectors.joining(", "));
	}

	private static String millimetres(Embouchure hole, Measure measure) {
		return millimetres(Lengths.of(measure, hole));
	}

	private static String millimetres(Optional<Length> length) {
		return length.map(known -> LengthWords.millimetres(known, 2)).orElse("");
	}
}
