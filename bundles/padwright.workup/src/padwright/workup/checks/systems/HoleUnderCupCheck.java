package padwright.workup.checks.systems;

import padwright.engine.length.Length;
import padwright.engine.length.LengthUnit;
import padwright.model.Present;
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

/** A pad covers its hole only if the cup is at least as wide. Judged where a key or its change gives either. */
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
		for (KeyChange change : system.getChanges()) {
			Present.of(change.getKey()).ifPresent(key -> check(change, key, effective, findings));
		}
	}

	private static void check(KeyFeatures features, Key key, EffectiveSystem system, Findings findings) {
		if (features.getHole() != null || features.getCup() != null) {
			system.key(key).ifPresent(effective -> check(features, effective, findings));
		}
	}

	private static void check(KeyFeatures features, EffectiveKey key, Findings findings) {
		Length hole = key.holeDiameter().orElse(Length.ZERO);
		Place place = Place.of(features, features.getHole() == null ? KeySystemPackage.Literals.KEY_FEATURES__CUP
				: KeySystemPackage.Literals.KEY_FEATURES__HOLE);
		key.cupDiameter().filter(hole::isLongerThan)
				.ifPresent(cup -> findings.error(IssueCodes.HOLE_WIDER_THAN_CUP, place,
						Advice.of(IssueCodes.HOLE_WIDER_THAN_CUP, key.name(), millimetres(hole), millimetres(cup))));
	}

	private static String millimetres(Length length) {
		return length.in(LengthUnit.MILLIMETRE, 3).toPlainString() + " mm";
	}
}
