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
				new Advice("There is a key " + key.getName() + " already",
						inherited ? "it is inherited from an extended system" : "each key is named once in a system",
						inherited ? "Write change " + key.getName() + " to alter the inherited key, or use another name"
								: "Use another name"));
	}
}
