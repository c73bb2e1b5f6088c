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
		EffectiveSystem effective = EffectiveSystem.of(system);
		for (Key key : system.getKeys()) {
			check(key, key, effective, findings);
		}
		for (Change change : system.getChanges()) {
			if (change instanceof KeyChange of) {
				Present.of(of.getKey()).ifPresent(key -> check(of, key, effective, findings));
			}
		}
	}

	private static void check(KeyFeatures features, Key key, EffectiveSystem system, Findings findings) {
		if (features.getHole() != null || features.getOver() != null || features.getCup() != null) {
			system.key(key).ifPresent(effective -> check(features, effective, findings));
		}
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
		return length.in(LengthUnit.MILLIMETRE, 3).toPlainString() + " mm";
	}
}
