package padwright.workup.compare;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

import padwright.engine.length.Length;
import padwright.model.Lengths;
import padwright.model.Resolved;
import padwright.model.keysystem.Coupling;
import padwright.model.keysystem.Embouchure;
import padwright.model.keysystem.Fingering;
import padwright.model.keysystem.KeySystem;
import padwright.model.keysystem.Purpose;
import padwright.model.keysystem.Touch;
import padwright.model.systems.EffectiveHole;
import padwright.model.systems.EffectiveJoint;
import padwright.model.systems.EffectiveKey;
import padwright.model.systems.EffectiveRod;
import padwright.model.systems.EffectiveSystem;
import padwright.model.systems.EffectiveTouch;
import padwright.workup.parts.CouplingWords;
import padwright.workup.report.Figures;
import padwright.workup.words.ClockWords;
import padwright.workup.words.LengthWords;
import padwright.workup.words.Messages;
import padwright.workup.words.Terms;
import padwright.workup.words.Texts;

/** What a key system says of each of its parts, in trade words: the part, then what is said of it. */
final class SystemFacts {

	private final Map<String, Map<String, String>> parts = new LinkedHashMap<>();
	private final Map<String, String> labels = new HashMap<>();
	private Map<String, String> part;

	private SystemFacts(KeySystem definition) {
		EffectiveSystem system = EffectiveSystem.of(definition);
		part = parts.computeIfAbsent(Messages.of("compare.system"), unseen -> new LinkedHashMap<>());
		say(Messages.of("compare.fact.pitch"), Messages.of("compare.pitch", Figures.plain(system.pitch()), Figures.plain(system.temperature())));
		say(Messages.of("compare.fact.transposition"), Messages.of("compare.semitones", Figures.signed(system.transposition(), 2)));
		say(Messages.of("compare.fact.12Oclock"), ClockWords.inWords(definition));
		system.joints().forEach(this::add);
		system.touches().forEach(this::add);
		system.holes().forEach(this::add);
		system.keys().forEach(this::add);
		system.rods().forEach(this::add);
		system.fingerings().forEach(this::add);
	}

	static SystemFacts of(KeySystem system) {
		return new SystemFacts(system);
	}

	/** What is said of each part, by what it is and is named. */
	Map<String, Map<String, String>> parts() {
		return parts;
	}

	/** The part as the trade calls it. */
	String label(String part) {
		return labels.getOrDefault(part, part);
	}

	private void begin(String kind, String name, String label) {
		part = parts.computeIfAbsent(kind + " " + name, unseen -> new LinkedHashMap<>());
		labels.put(kind + " " + name, label.equals(name) ? kind + " " + name : label + " (" + kind + " " + name + ")");
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
		begin(Messages.of("compare.part.joint"), joint.name(), joint.label());
		say(Messages.of("compare.fact.label"), joint.label());
		say(Messages.of("compare.fact.length"), joint.length());
		say(Messages.of("compare.fact.bore"), joint.bore().stream().map(SystemFacts::width).collect(Collectors.joining(", ")));
		joint.embouchure().ifPresent(this::add);
		say(Messages.of("compare.fact.cork"), joint.cork());
	}

	private void add(Embouchure hole) {
		say(Messages.of("compare.fact.embouchureAlong"), Lengths.of(hole.getLength(), hole));
		say(Messages.of("compare.fact.embouchureAcross"), Lengths.of(hole.getWidth(), hole));
		say(Messages.of("compare.fact.embouchureChimney"), Lengths.of(hole.getChimney(), hole));
		say(Messages.of("compare.fact.embouchurePlace"), Lengths.of(hole.getPosition(), hole));
	}

	private static String width(EffectiveJoint.Width width) {
		return millimetres(width.diameter()) + width.position().map(at -> " " + Messages.of("compare.atPlace", millimetres(at))).orElse("");
	}

	private void add(EffectiveTouch touch) {
		begin(Messages.of("compare.part.touch"), touch.name(), touch.label());
		say(Messages.of("compare.fact.label"), touch.label());
		say(Messages.of("compare.fact.finger"), touch.finger());
	}

	private void add(EffectiveHole hole) {
		begin(Messages.of("compare.part.hole"), hole.name(), hole.label());
		say(Messages.of("compare.fact.diameter"), hole.diameter());
		say(Messages.of("compare.fact.rim"), hole.rimWidth());
		say(Messages.of("compare.fact.chimney"), hole.chimney());
		say(Messages.of("compare.fact.undercut"), hole.undercut());
		say(Messages.of("compare.fact.finger"), touches(hole.touches()));
		say(Messages.of("compare.fact.joint"), hole.joint().map(EffectiveJoint::label).orElse(""));
		say(Messages.of("compare.fact.place"), hole.position());
		say(Messages.of("compare.fact.angle"), hole.around().toPlainString() + "°");
	}

	private void add(EffectiveKey key) {
		begin(Messages.of("compare.part.key"), key.name(), key.label());
		say(Messages.of("compare.fact.label"), key.label());
		say(Messages.of("compare.fact.atRest"), Terms.of(key.posture()));
		say(Messages.of("compare.fact.turnsWith"), key.whole().map(EffectiveKey::name).orElse(""));
		say(Messages.of("compare.fact.touches"), touches(key.touches()));
		say(Messages.of("compare.fact.closes"), couplings(key.closes()));
		say(Messages.of("compare.fact.opens"), couplings(key.opens()));
		say(Messages.of("compare.fact.holds"), couplings(key.holds()));
		addHole(key);
		addCup(key);
		say(Messages.of("compare.fact.joint"), key.joint().map(EffectiveJoint::label).orElse(""));
		say(Messages.of("compare.fact.place"), key.position());
		say(Messages.of("compare.fact.angle"), key.around().toPlainString() + "°");
	}

	private void addHole(EffectiveKey key) {
		say(Messages.of("compare.fact.hole"), key.holeDiameter());
		say(Messages.of("compare.fact.rim"), key.rimWidth());
		say(Messages.of("compare.fact.chimney"), key.chimney());
		say(Messages.of("compare.fact.undercut"), key.undercut());
		say(Messages.of("compare.fact.holeMade"), key.holeMake().map(Terms::of).orElse(""));
	}

	private void addCup(EffectiveKey key) {
		say(Messages.of("compare.fact.cup"), key.cupDiameter());
		say(Messages.of("compare.fact.cupDepth"), key.cupDepth());
		say(Messages.of("compare.fact.cupStyle"), key.cupStyle().map(Terms::of).orElse(""));
		say(Messages.of("compare.fact.opening"), key.perforation());
		say(Messages.of("compare.fact.padHeldBy"), key.fastening().map(Terms::of).orElse(""));
		say(Messages.of("compare.fact.hinge"), key.hinge().map(Terms::of).orElse(""));
		say(Messages.of("compare.fact.arm"), key.arm());
		say(Messages.of("compare.fact.rise"), key.rise());
		say(Messages.of("compare.fact.spring"), key.spring()
				.map(weight -> Messages.of("weight.grams", Texts.decimal(weight.toPlainString()), weight)).orElse(""));
	}

	private void add(EffectiveRod rod) {
		begin(Messages.of("compare.part.rod"), rod.name(), rod.label());
		say(Messages.of("compare.fact.joint"), rod.joint().map(EffectiveJoint::label).orElse(""));
		say(Messages.of("compare.fact.from"), rod.from());
		say(Messages.of("compare.fact.to"), rod.to());
		say(Messages.of("compare.fact.angle"), rod.around().map(around -> around.toPlainString() + "°").orElse(""));
		say(Messages.of("compare.fact.carries"), rod.bearings().stream().flatMap(bearing -> Resolved.of(bearing.getKey())
				.map(key -> bearing.isPinned() ? Messages.of("compare.pinned", key.getName()) : key.getName()).stream())
				.collect(Collectors.joining(", ")));
	}

	private void add(String note, List<Fingering> fingerings) {
		if (note != null) {
			begin(Messages.of("compare.part.note"), note, note);
			say(Messages.of("compare.fact.fingerings"), fingerings.stream().map(SystemFacts::pressed).collect(Collectors.joining("; ")));
		}
	}

	private static String pressed(Fingering fingering) {
		String label = fingering.getLabel() == null ? "" : fingering.getLabel() + " ";
		String purpose = fingering.getPurpose() == Purpose.USUAL ? "" : "(" + Terms.of(fingering.getPurpose()) + ") ";
		return label + purpose + fingering.getPresses().stream().flatMap(press -> Resolved.of(press.getTouch())
				.map(touch -> press.isHalf() ? Messages.of("compare.half", touch.getName()) : touch.getName()).stream())
				.collect(Collectors.joining(" "));
	}

	private static String touches(List<Touch> touches) {
		return touches.stream().flatMap(touch -> Resolved.of(touch).stream()).map(Touch::getName)
				.collect(Collectors.joining(", "));
	}

	private static String couplings(List<Coupling> couplings) {
		return couplings.stream().flatMap(coupling -> Resolved.of(coupling.getDriven())
				.map(driven -> driven.getName() + how(coupling)).stream()).collect(Collectors.joining("; "));
	}

	private static String how(Coupling coupling) {
		String words = CouplingWords.of(coupling);
		return words.isEmpty() ? "" : " (" + words + ")";
	}

	private static String millimetres(Length length) {
		return LengthWords.millimetres(length, 3) + " mm";
	}
}
