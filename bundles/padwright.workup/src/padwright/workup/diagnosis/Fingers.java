package padwright.workup.diagnosis;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import padwright.engine.diagnosis.NoteFingering;
import padwright.engine.mechanism.MechanismState;
import padwright.model.systems.NotePitch;
import padwright.workup.mechanism.ClashPhrase;
import padwright.workup.mechanism.SystemFingering;
import padwright.workup.mechanism.SystemMechanism;
import padwright.workup.service.ServicePlan;
import padwright.workup.words.Phrase;

/** What the fingers of a player do on the pads of a plan's system. */
final class Fingers {

	private final SystemMechanism mechanism;

	Fingers(ServicePlan plan) {
		mechanism = SystemMechanism.of(plan.system());
	}

	/** By note with its cents all its fingerings, both in the order of the system. */
	Map<String, List<FingeredNote>> notes() {
		Map<String, List<FingeredNote>> notes = new LinkedHashMap<>();
		for (SystemFingering fingering : mechanism.fingerings()) {
			List<FingeredNote> alternatives =
					notes.computeIfAbsent(NotePitch.of(fingering.fingering()), note -> new ArrayList<>());
			alternatives.add(note(fingering, alternatives.size() + 1));
		}
		return notes;
	}

	private FingeredNote note(SystemFingering fingering, int number) {
		MechanismState state = mechanism.state(fingering);
		List<Phrase> obstacles = new ArrayList<>();
		fingering.missing().forEach(touch -> obstacles.add(Phrase.of("note.noTouch", touch)));
		state.contradictions().forEach(clash -> obstacles.add(ClashPhrase.of(clash)));
		Optional<NoteFingering> closed = obstacles.isEmpty()
				? Optional.of(new NoteFingering(fingering.name(), mechanism.closedPads(state))) : Optional.empty();
		return new FingeredNote(fingering.name(), fingering.label(), number, closed, obstacles);
	}
}
