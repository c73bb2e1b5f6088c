package padwright.workup.mechanism;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

import org.eclipse.emf.ecore.EObject;

import padwright.engine.mechanism.Clash;
import padwright.engine.mechanism.FingeringReview;
import padwright.model.keysystem.Titled;
import padwright.model.systems.EffectiveKey;
import padwright.model.systems.EffectiveSystem;
import padwright.model.systems.EffectiveTouch;
import padwright.workup.checks.Advice;
import padwright.workup.checks.IssueCodes;
import padwright.workup.checks.Severity;

/** All that the fingerings of a system show to be wanting; nothing where it has none. */
final class Shortcomings {

	private final SystemMechanism mechanism;
	private final Map<String, EObject> fingerings = new LinkedHashMap<>();
	private final Map<String, EObject> keys = new HashMap<>();
	private final Map<String, EObject> touches = new HashMap<>();
	private final List<Shortcoming> found = new ArrayList<>();

	private Shortcomings(SystemMechanism mechanism) {
		this.mechanism = mechanism;
		mechanism.fingerings().forEach(each -> fingerings.put(each.name(), each.fingering()));
		mechanism.system().keys().stream().map(EffectiveKey::definition).forEach(key -> name(key, keys));
		mechanism.system().touches().stream().map(EffectiveTouch::definition).forEach(touch -> name(touch, touches));
	}

	private static void name(Titled thing, Map<String, EObject> byName) {
		if (Objects.nonNull(thing.getName())) {
			byName.putIfAbsent(thing.getName(), thing);
		}
	}

	static List<Shortcoming> of(EffectiveSystem system) {
		Shortcomings all = new Shortcomings(SystemMechanism.of(system));
		if (!all.fingerings.isEmpty()) {
			all.find();
		}
		return all.found;
	}

	private void find() {
		FingeringReview review = mechanism.review();
		review.states().forEach((note, state) -> state.contradictions().forEach(clash -> contradiction(note, clash)));
		List<String> unreached = mechanism.mechanism().unreachableKeys();
		unreached.forEach(key -> add(Severity.WARNING, IssueCodes.KEY_UNREACHED, keys.get(key),
				Advice.of(IssueCodes.KEY_UNREACHED, key)));
		review.unusedKeys().stream().filter(key -> !unreached.contains(key)).forEach(key -> add(Severity.INFO,
				IssueCodes.KEY_UNUSED, keys.get(key), Advice.of(IssueCodes.KEY_UNUSED, key)));
		review.unusedTouches().forEach(touch -> add(Severity.INFO, IssueCodes.TOUCH_UNUSED, touches.get(touch),
				Advice.of(IssueCodes.TOUCH_UNUSED, touch)));
		review.idle().forEach(note -> add(Severity.WARNING, IssueCodes.NOTE_IDLE, fingerings.get(note),
				Advice.of(IssueCodes.NOTE_IDLE, note)));
		review.alike().forEach(alike -> add(Severity.WARNING, IssueCodes.NOTES_ALIKE, fingerings.get(alike.second()),
				Advice.of(IssueCodes.NOTES_ALIKE, alike.first(), alike.second())));
	}

	private void contradiction(String note, Clash clash) {
		Advice advice = clash.kind() == Clash.Kind.CIRCULAR
				? Advice.of("fingering-contradiction.circle", note, ClashPhrase.of(clash))
				: Advice.of(IssueCodes.FINGERING_CONTRADICTION, note, ClashPhrase.of(clash));
		add(Severity.ERROR, IssueCodes.FINGERING_CONTRADICTION, fingerings.get(note), advice);
	}

	private void add(Severity severity, String code, EObject subject, Advice advice) {
		found.add(new Shortcoming(severity, code, subject, advice));
	}
}
