package padwright.workup.checks.systems;

import padwright.engine.length.Length;
import padwright.engine.length.LengthUnit;
import padwright.model.Present;
import padwright.model.keysystem.Change;
import padwright.model.keysystem.Key;
import padwright.model.keysystem.KeyChange;
import padwright.model.keysystem.KeyFeatures;
import padwright.model.keysystem.KeySystem;
import padwright.model.keysystem.KeySystemPackage;
import padwright.model.systems.EffectiveKey;
import padwright.model.systems.EffectiveSystem;
import padwright.workup.checks.Advice;
import padwright.workup.checks.Check;
import padwright.workup.checks.Findings;
import padwright.workup.checks.IssueCodes;
import padwright.workup.checks.Place;

/** A hinge lies outside of the hole. Judged where a key or its change gives the arm. */
public final class ArmCheck extends Check<KeySystem> {

	public ArmCheck() {
		super(KeySystem.class);
	}

	@Override
	protected void check(KeySystem system, Findings findings) {
		EffectiveSystem effective = EffectiveSystem.of(system);
		for (Key key : system.getKeys()) {
			check(key, key, effective, findings);
		}
		for (Change change : system.getChanges()) {
			if (change instanceof KeyChange changed) {
				Present.of(changed.getKey()).ifPresent(key -> check(changed, key, effective, findings));
			}
		}
	}

	private static void check(KeyFeatures features, Key key, EffectiveSystem system, Findings findings) {
		if (features.getArm() != null) {
			system.key(key).ifPresent(effective -> check(features, effective, findings));
		}
	}

	private static void check(KeyFeatures features, EffectiveKey key, Findings findings) {
		Length hole = key.holeDiameter().orElse(Length.ZERO);
		key.arm().filter(arm -> !arm.times(2).isLongerThan(hole)).ifPresent(arm -> findings.error(
				IssueCodes.ARM_SHORT, Place.of(features, KeySystemPackage.Literals.KEY_FEATURES__ARM),
				Advice.of(IssueCodes.ARM_SHORT, millimetres(arm), key.name(), millimetres(hole))));
	}

	private static String millimetres(Length length) {
		return length.in(LengthUnit.MILLIMETRE, 3).toPlainString() + " mm";
	}
}
