package padwright.workup.checks.systems;

import java.util.HashMap;
import java.util.Map;

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

/** A key name stands once in a system, inherited keys included. */
public final class DuplicateKeyCheck extends Check<KeySystem> {

	public DuplicateKeyCheck() {
		super(KeySystem.class);
	}

	@Override
	protected void check(KeySystem system, Findings findings) {
		Map<String, Key> byName = new HashMap<>();
		for (EffectiveKey key : EffectiveSystem.of(system).keys()) {
			Key first = byName.putIfAbsent(key.name(), key.definition());
			if (first != null && key.name() != null && key.definition().eContainer() == system) {
				report(key.definition(), first.eContainer() != system, findings);
			}
		}
	}

	private static void report(Key key, boolean inherited, Findings findings) {
		findings.error(IssueCodes.DUPLICATE_KEY, Place.of(key, KeySystemPackage.Literals.TITLED__NAME),
				inherited ? Advice.of("duplicate-key.inherited", key.getName())
						: Advice.of("duplicate-key", key.getName()));
	}
}
