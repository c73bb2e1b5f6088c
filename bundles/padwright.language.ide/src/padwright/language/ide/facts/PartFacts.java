package padwright.language.ide.facts;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Collectors;

import org.eclipse.emf.ecore.EObject;

import padwright.engine.length.Length;
import padwright.language.ide.words.Messages;
import padwright.model.Resolved;
import padwright.model.keysystem.Hole;
import padwright.model.keysystem.Joint;
import padwright.model.keysystem.KeySystem;
import padwright.model.keysystem.Rod;
import padwright.model.keysystem.Titled;
import padwright.model.keysystem.Touch;
import padwright.model.systems.EffectiveHole;
import padwright.model.systems.EffectiveJoint;
import padwright.model.systems.EffectiveRod;
import padwright.model.systems.EffectiveSystem;
import padwright.model.systems.EffectiveTouch;
import padwright.model.systems.Merged;
import padwright.workup.parts.Labels;
import padwright.workup.words.LengthWords;

/** Touches, holes, joints and rods as they are in a system, in a line each. */
final class PartFacts {

	private final EffectiveSystem system;

	private PartFacts(KeySystem system) {
		this.system = EffectiveSystem.of(system);
	}

	/** Nothing of all else, and of what has no name yet. */
	static List<String> of(EObject part, KeySystem system) {
		if (part instanceof Titled titled && titled.getName() == null) {
			return List.of();
		}
		return new PartFacts(system).parts(part).map(parts -> String.join(", ", parts)).stream().toList();
	}

	private Optional<List<String>> parts(EObject part) {
		if (part instanceof Touch touch) {
			return system.touch(touch).map(this::touch);
		}
		if (part instanceof Hole hole) {
			return system.hole(hole).map(this::hole);
		}
		if (part instanceof Joint joint) {
			return system.joint(joint).map(PartFacts::joint);
		}
		return part instanceof Rod rod ? system.rod(rod).map(PartFacts::rod) : Optional.empty();
	}

	/** As in {@code G♯, finger L4, presses G♯ lever}. */
	private List<String> touch(EffectiveTouch touch) {
		List<String> parts = new ArrayList<>(List.of(touch.label(), Messages.of("touch.finger", touch.finger())));
		among(system.keys(), key -> key.touches().contains(touch.definition()))
				.ifPresent(keys -> parts.add(Messages.of("touch.presses", keys)));
		among(system.holes(), hole -> hole.touches().contains(touch.definition()))
				.ifPresent(holes -> parts.add(Messages.of("touch.covers", holes)));
		return parts;
	}

	private List<String> hole(EffectiveHole hole) {
		List<String> parts = new ArrayList<>(List.of(hole.label()));
		hole.diameter().ifPresent(wide -> parts.add(mm(wide)));
		hole.chimney().ifPresent(high -> parts.add(Messages.of("hole.chimney", mm(high))));
		names(hole.touches(), Labels::of).ifPresent(touches -> parts.add(Messages.of("hole.coveredBy", touches)));
		among(system.keys(), key -> key.over().map(EffectiveHole::definition).equals(Optional.of(hole.definition())))
				.ifPresent(keys -> parts.add(Messages.of("hole.under", keys)));
		hole.position().ifPresent(at -> parts.add(Messages.of("hole.at", mm(at))));
		return parts;
	}

	private static List<String> joint(EffectiveJoint joint) {
		List<String> parts = new ArrayList<>(List.of(joint.label()));
		joint.length().ifPresent(length -> parts.add(Messages.of("joint.long", mm(length))));
		names(joint.bore(), width -> mm(width.diameter())).ifPresent(bore -> parts.add(Messages.of("joint.bore", bore)));
		return parts;
	}

	private static List<String> rod(EffectiveRod rod) {
		List<String> parts = new ArrayList<>(List.of(rod.label()));
		rod.from().ifPresent(from -> rod.to().ifPresent(to -> parts.add(Messages.of("rod.posts", mm(from), mm(to)))));
		names(rod.bearings(), bearing -> Resolved.of(bearing.getKey()).map(Labels::of).orElse(""))
				.ifPresent(keys -> parts.add(Messages.of("rod.carries", keys)));
		return parts;
	}

	private static <T extends Merged<?, ?>> Optional<String> among(Collection<T> all, Predicate<T> chosen) {
		return names(all.stream().filter(chosen).toList(), Merged::label);
	}

	private static <T> Optional<String> names(Collection<T> all, Function<T, String> name) {
		return Optional.of(all.stream().map(name).filter(Objects::nonNull).collect(Collectors.joining(", "))).filter(names -> !names.isEmpty());
	}

	private static String mm(Length length) {
		return LengthWords.millimetres(length, 2) + " mm";
	}
}
