package padwright.paper.system;

import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

import padwright.engine.mechanism.HoleState;
import padwright.model.Resolved;
import padwright.model.keysystem.Press;
import padwright.model.keysystem.Purpose;
import padwright.model.systems.EffectiveKey;
import padwright.model.systems.EffectiveSystem;
import padwright.model.systems.EffectiveTouch;
import padwright.paper.sheet.SheetHole;
import padwright.paper.sheet.SheetNote;
import padwright.paper.sheet.SheetNote.Opening;
import padwright.workup.mechanism.SystemFingering;
import padwright.workup.mechanism.SystemHole;
import padwright.workup.mechanism.SystemMechanism;
import padwright.workup.words.Terms;

/** The fingerings of a system with the holes that they leave open. */
final class SheetFingerings {

	private final EffectiveSystem system;
	private final List<String> keys;
	private final SystemMechanism mechanism;

	/** @param keys as they are numbered */
	SheetFingerings(EffectiveSystem system, List<EffectiveKey> keys) {
		this.system = system;
		this.keys = keys.stream().map(EffectiveKey::name).toList();
		this.mechanism = SystemMechanism.of(system);
	}

	List<String> touches() {
		return system.touches().stream().map(EffectiveTouch::name).toList();
	}

	/** From the upper end down, each with the number of its key in the tables. */
	List<SheetHole> holes() {
		return mechanism.holes().stream().map(SystemHole::name).map(name -> new SheetHole(name,
				keys.contains(name) ? String.valueOf(keys.indexOf(name) + 1) : name)).toList();
	}

	/** Each name once: by purpose, the usual ones first, and for each from the lowest note up. */
	List<SheetNote> notes() {
		Map<String, SheetNote> notes = new LinkedHashMap<>();
		mechanism.fingerings().stream().sorted(Comparator.comparing(SheetFingerings::purpose)
				.thenComparing(fingering -> fingering.pitch().orElse(0)))
				.forEach(fingering -> notes.putIfAbsent(fingering.name(), note(fingering)));
		return List.copyOf(notes.values());
	}

	private static Purpose purpose(SystemFingering fingering) {
		return fingering.fingering().isSetPurpose() ? fingering.fingering().getPurpose() : Purpose.USUAL;
	}

	private SheetNote note(SystemFingering fingering) {
		Set<String> touches = new HashSet<>();
		Set<String> half = new HashSet<>();
		for (Press press : fingering.fingering().getPresses()) {
			Resolved.of(press.getTouch()).filter(touch -> touch.getName() != null).ifPresent(touch -> {
				touches.add(touch.getName());
				if (press.isHalf()) {
					half.add(touch.getName());
				}
			});
		}
		Purpose purpose = purpose(fingering);
		Map<String, Opening> holes = new LinkedHashMap<>();
		mechanism.state(fingering).holes().forEach((hole, state) -> holes.put(hole, opening(state)));
		return new SheetNote(fingering.name(),
				purpose == Purpose.USUAL ? "" : Terms.of(purpose), touches, half, holes);
	}

	private static Opening opening(HoleState state) {
		return switch (state) {
		case OPEN -> Opening.OPEN;
		case HALF -> Opening.HALF;
		case CLOSED -> Opening.CLOSED;
		};
	}
}
