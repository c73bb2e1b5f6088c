package padwright.workup.checks.systems;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

import padwright.model.keysystem.Fingering;
import padwright.model.keysystem.KeySystem;
import padwright.model.keysystem.KeySystemPackage;
import padwright.model.keysystem.Touch;
import padwright.model.systems.EffectiveKey;
import padwright.model.systems.EffectiveSystem;
import padwright.workup.checks.Advice;
import padwright.workup.checks.Check;
import padwright.workup.checks.Findings;
import padwright.workup.checks.IssueCodes;
import padwright.workup.checks.Place;

/** Each finger of a fingering presses exactly one key. */
public final class FingeringTouchCheck extends Check<KeySystem> {

	public FingeringTouchCheck() {
		super(KeySystem.class);
	}

	@Override
	protected void check(KeySystem system, Findings findings) {
		Map<Touch, List<EffectiveKey>> operated = EffectiveSystem.of(system).keys().stream()
				.filter(key -> key.touch().isPresent())
				.collect(Collectors.groupingBy(key -> key.touch().orElseThrow()));
		for (Fingering fingering : system.getFingerings()) {
			for (int index = 0; index < fingering.getTouches().size(); index++) {
				check(fingering, index, operated, findings);
			}
		}
	}

	private static void check(Fingering fingering, int index, Map<Touch, List<EffectiveKey>> operated,
			Findings findings) {
		Touch touch = fingering.getTouches().get(index);
		List<EffectiveKey> keys = operated.getOrDefault(touch, List.of());
		if (keys.size() != 1) {
			
			findings.error(IssueCodes.TOUCH_AMBIGUOUS,
					new Place(fingering, KeySystemPackage.Literals.FINGERING__TOUCHES, index),
					keys.isEmpty() ? Advice.of("touch-ambiguous.none", touch)
							: Advice.of("touch-ambiguous.many", touch,
									keys.stream().map(EffectiveKey::name).collect(Collectors.joining(", "))));
		}
	}
}
