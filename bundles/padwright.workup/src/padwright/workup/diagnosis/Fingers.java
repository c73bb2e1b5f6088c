package padwright.workup.diagnosis;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

import padwright.engine.diagnosis.NoteFingering;
import padwright.engine.fingering.KeyAction;
import padwright.engine.fingering.RestPosture;
import padwright.model.Present;
import padwright.model.keysystem.Fingering;
import padwright.model.keysystem.Posture;
import padwright.model.keysystem.Press;
import padwright.model.keysystem.Touch;
import padwright.model.systems.EffectiveKey;
import padwright.model.systems.EffectiveSystem;
import padwright.workup.regulate.PlanCouplings;
import padwright.workup.service.ServicePlan;

/** What the fingers of a player do on the keys of a plan's system. */
final class Fingers {

	private final EffectiveSystem system;
	private final KeyAction action;

	/** @throws padwright.engine.coupling.CircularCouplingException if keys close each other in a circle */
	Fingers(ServicePlan plan) {
		system = plan.system();
		Map<String, RestPosture> postures = new LinkedHashMap<>();
		system.keys().forEach(key -> postures.put(key.name(),
				key.posture() == Posture.CLOSED ? RestPosture.CLOSED : RestPosture.OPEN));
		action = new KeyAction(postures, PlanCouplings.graph(plan));
	}

	/** All fingerings of a note, in their order. */
	List<FingeredNote> notes(String note, List<Fingering> fingerings) {
		List<FingeredNote> notes = new ArrayList<>();
		for (Fingering fingering : fingerings) {
			notes.add(note(note, fingering, notes.size() + 1));
		}
		return notes;
	}

	private FingeredNote note(String note, Fingering fingering, int number) {
		Optional<String> label = Optional.ofNullable(fingering.getLabel());
		String name = number == 1 ? note : note + "/" + label.orElse(String.valueOf(number));
		List<String> obstacles = new ArrayList<>();
		Set<String> pressed = pressed(fingering, obstacles);
		Optional<NoteFingering> closed = obstacles.isEmpty()
				? Optional.of(new NoteFingering(name, action.closedPads(pressed))) : Optional.empty();
		return new FingeredNote(name, label, number, closed, String.join("; ", obstacles));
	}

	private Set<String> pressed(Fingering fingering, List<String> obstacles) {
		Set<String> pressed = new LinkedHashSet<>();
		for (Press press : fingering.getPresses()) {
			Present.of(press.getTouch()).filter(touch -> system.touch(touch).isPresent()).ifPresentOrElse(
					touch -> system.keys().stream().filter(key -> key.touches().contains(touch)).map(EffectiveKey::name)
							.forEach(pressed::add),
					() -> obstacles.add("the key system lacks "
							+ Present.of(press.getTouch()).map(Touch::getName).orElse("a touch that it presses")));
		}
		return pressed;
	}
}
