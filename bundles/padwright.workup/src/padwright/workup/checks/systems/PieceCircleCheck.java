package padwright.workup.checks.systems;

import padwright.model.Resolved;
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

/** A key turns with another that, directly or through others, is a piece by itself. */
public final class PieceCircleCheck extends Check<KeySystem> {

	public PieceCircleCheck() {
		super(KeySystem.class);
	}

	@Override
	protected void check(KeySystem system, Findings findings) {
		for (EffectiveKey key : EffectiveSystem.of(system).keys()) {
			for (KeyFeatures features : key.features()) {
				if (features.eContainer() == system && Resolved.of(features.getWhole()).isPresent()
						&& key.whole().isEmpty()) {
					findings.error(IssueCodes.PIECE_CIRCLE,
							Place.of(features, KeySystemPackage.Literals.KEY_FEATURES__WHOLE),
							Advice.of(IssueCodes.PIECE_CIRCLE, key.name(), features.getWhole().getName()));
				}
			}
		}
	}
}
