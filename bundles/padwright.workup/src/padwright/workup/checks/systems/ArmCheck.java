package padwright.workup.checks.systems;

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
import padwright.workup.words.LengthWords;

/** A hinge lies outside of the hole. Judged where a key or its change gives the arm. */
public final class ArmCheck extends Check<KeySystem> {

	public ArmCheck() {
		super(KeySystem.class);
	}

	@Override
	protected void check(KeySystem system, Findings findings) {
		WrittenKeys.forEach(system, (features, key) -> {
			if (features.getArm() != null) {
				check(features, key, findings);
			}
		});
	}

	private static void check(KeyFeatures features, EffectiveKey key, Findings findings) {
		Length hole = key.holeDiameter().orElse(Length.ZERO);
		key.arm().filter(arm -> !arm.times(2).isLongerThan(hole)).ifPresent(arm -> findings.error(
				IssueCodes.ARM_SHORT, Place.of(features, KeySystemPackage.Literals.KEY_FEATURES__ARM),
				Advice.of(IssueCodes.ARM_SHORT, millimetres(arm), key.name(), millimetres(hole))));
	}

	private static String millimetres(Length length) {
		return LengthWords.millimetres(length, 3) + " mm";
	}
}
