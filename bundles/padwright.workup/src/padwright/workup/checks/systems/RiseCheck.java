package padwright.workup.checks.systems;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

import padwright.engine.length.Length;
import padwright.model.keysystem.KeyFeatures;
import padwright.model.keysystem.KeySystem;
import padwright.model.keysystem.KeySystemPackage;
import padwright.model.systems.EffectiveKey;
import padwright.workup.checks.Advice;
import padwright.workup.checks.Check;
import padwright.workup.checks.Findings;
import padwright.workup.checks.IssueCodes;
import padwright.workup.checks.Place;
import padwright.workup.report.Figures;
import padwright.workup.sound.LowRise;
import padwright.workup.sound.SystemSound;

/**
 * A pad that is raised so little, as for a quiet action, that a usual note is flat by it. Judged where a key or its change
 * gives the rise, and only for pads that hang low enough to do that: pitches take time.
 */
public final class RiseCheck extends Check<KeySystem> {

	/** Pads that are raised by a sixth of their hole and this do less, for every hole of the flutes that ship. */
	private static final Length BESIDES = Length.millimetres("0.3");
	private static final int SIXTH = 6;

	public RiseCheck() {
		super(KeySystem.class);
	}

	@Override
	protected void check(KeySystem system, Findings findings) {
		Map<String, KeyFeatures> low = new LinkedHashMap<>();
		WrittenKeys.forEach(system, (features, key) -> {
			if (features.getRise() != null && isLow(key)) {
				low.put(key.name(), features);
			}
		});
		if (!low.isEmpty()) {
			LowRise.of(SystemSound.of(system), low.keySet()).forEach(pad -> findings.warning(IssueCodes.RISE_LOW,
					Place.of(low.get(pad.key()), KeySystemPackage.Literals.KEY_FEATURES__RISE), advice(pad)));
		}
	}

	/** Whether it may flatten a note at all. */
	static boolean isLow(EffectiveKey key) {
		Optional<Length> hole = key.holeDiameter();
		return hole.isPresent() && key.rise().filter(rise -> hole.get().isLongerThan(rise.minus(BESIDES).times(SIXTH)))
				.isPresent();
	}

	private static Advice advice(LowRise pad) {
		return Advice.of(IssueCodes.RISE_LOW, pad.key(), pad.note(), Figures.number(pad.cents(), 0),
				pad.enough().map(rise -> Figures.number(rise, 1)).orElse("20"));
	}
}
