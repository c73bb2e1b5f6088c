package padwright.workup.mechanism;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

import padwright.engine.mechanism.Mechanism;
import padwright.engine.mechanism.FingerTouch;
import padwright.engine.mechanism.Pressing;
import padwright.model.Resolved;
import padwright.model.keysystem.Fingering;
import padwright.model.keysystem.Press;
import padwright.model.keysystem.Touch;
import padwright.model.systems.EffectiveSystem;

/** The fingerings of a system as the mechanism understands them. */
final class Fingerings {

	private final EffectiveSystem system;
	private final Set<String> touches = new HashSet<>();
	private final List<SystemFingering> found = new ArrayList<>();
	private final Set<String> names = new HashSet<>();

	private Fingerings(EffectiveSystem system, Mechanism mechanism) {
		this.system = system;
		mechanism.touches().stream().map(FingerTouch::name).forEach(touches::add);
		system.fingerings().forEach((note, fingerings) -> {
			if (note != null) {
				fingerings.forEach(fingering -> add(note, fingering, fingerings.indexOf(fingering) + 1));
			}
		});
	}

	static List<SystemFingering> of(EffectiveSystem system, Mechanism mechanism) {
		return new Fingerings(system, mechanism).found;
	}

	private void add(String note, Fingering fingering, int number) {
		Set<String> whole = new LinkedHashSet<>();
		Set<String> half = new LinkedHashSet<>();
		List<String> missing = new ArrayList<>();
		for (Press press : fingering.getPresses()) {
			Optional<Touch> touch = Resolved.of(press.getTouch());
			if (touch.flatMap(system::touch).isEmpty()) {
				touch.map(Touch::getName).ifPresent(missing::add);
			} else if (touches.contains(touch.get().getName())) {
				(press.isHalf() ? half : whole).add(touch.get().getName());
			}
		}
		half.removeAll(whole);
		found.add(new SystemFingering(name(note, fingering, number), fingering,
				Optional.ofNullable(fingering.getCents()).orElse(BigDecimal.ZERO),
				new Pressing(whole, half, Set.of()), missing));
	}

	private String name(String note, Fingering fingering, int number) {
		String name = number == 1 ? note
				: note + "/" + Optional.ofNullable(fingering.getLabel()).orElse(String.valueOf(number));
		return names.add(name) ? name : note + "/" + number;
	}
}
