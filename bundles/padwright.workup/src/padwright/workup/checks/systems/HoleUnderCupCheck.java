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

/**
 * A pad covers its hole only if the cup is at least as wide as the hole with its rim. Judged where a key or its change
 * gives any of them.
 */
public final class HoleUnderCupCheck extends Check<KeySystem> {

	public HoleUnderCupCheck() {
		super(KeySystem.class);
	}

	@Override
	protected void check(KeySystem system, Findings findings) {
		WrittenKeys.forEach(system, (features, key) -> {
			if (features.getHole() != null || features.getOver() != null || features.getCup() != null) {
				check(features, key, findings);
			}
		});
	}

	private static void check(KeyFeatures features, EffectiveKey key, Findings findings) {
		Length rim = key.rimWidth().orElse(Length.ZERO);
		Length outside = key.holeDiameter().map(hole -> hole.plus(rim).plus(rim)).orElse(Length.ZERO);
		Place place = Place.of(features, features.getHole() == null ? KeySystemPackage.Literals.KEY_FEATURES__CUP
				: KeySystemPackage.Literals.KEY_FEATURES__HOLE);
		key.cupDiameter().filter(outside::isLongerThan).ifPresent(cup -> findings.error(IssueCodes.HOLE_WIDER_THAN_CUP,
				place, Advice.of(IssueCodes.HOLE_WIDER_THAN_CUP, key.name(), millimetres(outside), millimetres(cup))));
	}

	private static String millimetres(Length length) {
		return LengthWords.millimetres(length, 3) + " mm";
	}
}
