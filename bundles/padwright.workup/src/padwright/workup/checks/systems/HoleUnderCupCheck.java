package padwright.workup.checks.systems;

import padwright.engine.length.Length;
import padwright.engine.length.LengthUnit;
import padwright.model.keysystem.Key;
import padwright.model.keysystem.KeySystem;
import padwright.model.keysystem.KeySystemPackage;
import padwright.model.systems.EffectiveKey;
import padwright.model.systems.EffectiveSystem;
import padwright.workup.checks.Advice;
import padwright.workup.checks.Check;
import padwright.workup.checks.Findings;
import padwright.workup.checks.IssueCodes;
import padwright.workup.checks.Place;

/** A pad covers its hole only if the cup is at least as wide. */
public final class HoleUnderCupCheck extends Check<KeySystem> {

	public HoleUnderCupCheck() {
		super(KeySystem.class);
	}

	@Override
	protected void check(KeySystem system, Findings findings) {
		EffectiveSystem.of(system).keys().stream()
				.filter(key -> key.definition().eContainer() == system).forEach(key -> check(key, findings));
	}

	private static void check(EffectiveKey key, Findings findings) {
		Length hole = key.holeDiameter().orElse(Length.ZERO);
		key.cupDiameter().filter(hole::isLongerThan)
				.ifPresent(cup -> findings.error(IssueCodes.HOLE_WIDER_THAN_CUP,
						Place.of(key.definition(), KeySystemPackage.Literals.KEY_FEATURES__HOLE),
						new Advice("The hole of " + key.name() + " is wider than its cup",
								millimetres(hole) + " cannot be covered from a cup of " + millimetres(cup),
								"Measure both again")));
	}

	private static String millimetres(Length length) {
		return length.in(LengthUnit.MILLIMETRE, 3).toPlainString() + " mm";
	}
}
