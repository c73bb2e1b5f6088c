package padwright.workup.checks.systems;

import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import padwright.model.Resolved;
import padwright.model.keysystem.Fingering;
import padwright.model.keysystem.KeySystem;
import padwright.model.keysystem.KeySystemPackage;
import padwright.model.keysystem.Press;
import padwright.model.keysystem.Touch;
import padwright.model.systems.EffectiveSystem;
import padwright.workup.checks.Advice;
import padwright.workup.checks.Check;
import padwright.workup.checks.Findings;
import padwright.workup.checks.IssueCodes;
import padwright.workup.checks.Place;

/** What is pressed for a note is a touch of the system that presses a key or covers a hole. */
public final class FingeringTouchCheck extends Check<KeySystem> {

	public FingeringTouchCheck() {
		super(KeySystem.class);
	}

	@Override
	protected void check(KeySystem system, Findings findings) {
		EffectiveSystem effective = EffectiveSystem.of(system);
		Set<Touch> used = Stream.concat(effective.keys().stream().flatMap(key -> key.touches().stream()),
				effective.holes().stream().flatMap(hole -> hole.touches().stream())).collect(Collectors.toSet());
		for (Fingering fingering : system.getFingerings()) {
			for (Press press : fingering.getPresses()) {
				Resolved.of(press.getTouch()).ifPresent(touch -> check(press, touch, effective, used, findings));
			}
		}
	}

	private static void check(Press press, Touch touch, EffectiveSystem system, Set<Touch> used, Findings findings) {
		Place place = Place.of(press, KeySystemPackage.Literals.PRESS__TOUCH);
		if (system.touch(touch).isEmpty()) {
			findings.error(IssueCodes.TOUCH_REMOVED, place, Advice.of(IssueCodes.TOUCH_REMOVED, touch.getName()));
		} else if (!used.contains(touch)) {
			findings.error(IssueCodes.TOUCH_IDLE, place, Advice.of(IssueCodes.TOUCH_IDLE, touch.getName()));
		}
	}
}
