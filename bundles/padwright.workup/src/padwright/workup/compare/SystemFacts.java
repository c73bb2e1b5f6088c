package padwright.workup.compare;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import padwright.engine.length.Length;
import padwright.engine.length.LengthUnit;
import padwright.model.Present;
import padwright.model.keysystem.Coupling;
import padwright.model.keysystem.Fingering;
import padwright.model.keysystem.Touch;
import padwright.model.systems.EffectiveHole;
import padwright.model.systems.EffectiveJoint;
import padwright.model.systems.EffectiveKey;
import padwright.model.systems.EffectiveRod;
import padwright.model.systems.EffectiveSystem;
import padwright.model.systems.EffectiveTouch;

/** What a key system says of each of its parts, in trade words: the part, then what is said of it. */
final class SystemFacts {

	private final Map<String, Map<String, String>> parts = new LinkedHashMap<>();
	private Map<String, String> part;

	private SystemFacts(EffectiveSystem system) {
		begin("the system");
		say("pitch", system.pitch().toPlainString() + " Hz at " + system.temperature().toPlainString() + " °C");
		say("transposition", system.transposition().toPlainString() + " semitones");
		system.joints().forEach(this::add);
		system.touches().forEach(this::add);
		system.holes().forEach(this::add);
		system.keys().forEach(this::add);
		system.rods().forEach(this::add);
		system.fingerings().forEach(this::add);
	}

	static Map<String, Map<String, String>> of(EffectiveSystem system) {
		return new SystemFacts(system).parts;
	}

	private void begin(String name) {
		part = parts.computeIfAbsent(name, unseen -> new LinkedHashMap<>());
	}

	private void say(String what, String value) {
		if (!value.isEmpty()) {
			part.put(what, value);
		}
	}

	private void say(String what, Optional<Length> length) {
		length.ifPresent(known -> say(what, millimetres(known)));
	}

	private void add(EffectiveJoint joint) {
		begin("joint " + joint.name());
		say("label", joint.label());
		say("length", joint.length());
		say("bore", joint.bore().stream().map(SystemFacts::width).collect(Collectors.joining(", ")));
		say("cork", joint.cork());
	}

	private static String width(EffectiveJoint.Width width) {
		return millimetres(width.diameter()) + width.position().map(at -> " at " + millimetres(at)).orElse("");
	}

	private void add(EffectiveTouch touch) {
		begin("touch " + touch.name());
		say("label", touch.label());
		say("finger", touch.finger());
	}

	private void add(EffectiveHole hole) {
		begin("hole " + hole.name());
		say("diameter", hole.diameter());
		say("rim", hole.rimWidth());
		say("chimney", hole.chimney());
		say("undercut", hole.undercut());
		say("finger", touches(hole.touches()));
		say("joint", hole.joint().map(EffectiveJoint::label).orElse(""));
		say("place", hole.position());
		say("angle", hole.around().toPlainString());
	}

	private void add(EffectiveKey key) {
		begin("key " + key.name());
		say("label", key.label());
		say("at rest", key.posture().getLiteral());
		say("turns with", key.whole().map(EffectiveKey::name).orElse(""));
		say("touches", touches(key.touches()));
		say("closes", couplings(key.closes()));
		say("opens", couplings(key.opens()));
		say("holds", couplings(key.holds()));
		addHole(key);
		addCup(key);
		say("joint", key.joint().map(EffectiveJoint::label).orElse(""));
		say("place", key.position());
		say("angle", key.around().toPlainString());
	}

	private void addHole(EffectiveKey key) {
		say("hole", key.holeDiameter());
		say("rim", key.rimWidth());
		say("chimney", key.chimney());
		say("undercut", key.undercut());
		say("hole made", key.holeMake().map(Object::toString).orElse(""));
	}

	private void addCup(EffectiveKey key) {
		say("cup", key.cupDiameter());
		say("cup depth", key.cupDepth());
		say("cup style", key.cupStyle().map(Object::toString).orElse(""));
		say("opening", key.perforation());
		say("pad held by", key.fastening().map(Object::toString).orElse(""));
		say("hinge", key.hinge().map(Object::toString).orElse(""));
		say("arm", key.arm());
		say("rise", key.rise());
		say("spring", key.spring().map(weight -> weight.toPlainString() + " grams").orElse(""));
	}

	private void add(EffectiveRod rod) {
		begin("rod " + rod.name());
		say("from", rod.from());
		say("to", rod.to());
		say("carries", rod.bearings().stream().map(bearing -> bearing.getKey().getName())
				.collect(Collectors.joining(", ")));
	}

	private void add(String note, List<Fingering> fingerings) {
		if (note != null) {
			begin("note " + note);
			say("fingerings", fingerings.stream().map(SystemFacts::pressed).collect(Collectors.joining("; ")));
		}
	}

	private static String pressed(Fingering fingering) {
		String label = fingering.getLabel() == null ? "" : fingering.getLabel() + ": ";
		return label + fingering.getPresses().stream().flatMap(press -> Present.of(press.getTouch())
				.map(touch -> (press.isHalf() ? "half " : "") + touch.getName()).stream()).collect(Collectors.joining(" "));
	}

	private static String touches(List<Touch> touches) {
		return touches.stream().flatMap(touch -> Present.of(touch).stream()).map(Touch::getName)
				.collect(Collectors.joining(", "));
	}

	private static String couplings(List<Coupling> couplings) {
		return couplings.stream().flatMap(coupling -> Present.of(coupling.getDriven()).stream().flatMap(
				driven -> Stream.of(driven.getName() + (coupling.getRatio() == null ? ""
						: " (ratio " + coupling.getRatio().toPlainString() + ")")))).collect(Collectors.joining(", "));
	}

	private static String millimetres(Length length) {
		return length.in(LengthUnit.MILLIMETRE, 3).stripTrailingZeros().toPlainString() + " mm";
	}
}
