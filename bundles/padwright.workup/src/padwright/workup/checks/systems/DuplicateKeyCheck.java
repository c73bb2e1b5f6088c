package padwright.workup.checks.systems;

import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

import padwright.model.keysystem.KeySystem;
import padwright.model.keysystem.KeySystemPackage;
import padwright.model.keysystem.Titled;
import padwright.model.systems.EffectiveSystem;
import padwright.model.systems.Merged;
import padwright.workup.checks.Advice;
import padwright.workup.checks.Check;
import padwright.workup.checks.Findings;
import padwright.workup.checks.IssueCodes;
import padwright.workup.checks.Place;

/** A name stands once among the keys of a system, inherited ones included; as among its touches, holes, joints and rods. */
public final class DuplicateKeyCheck extends Check<KeySystem> {

	public DuplicateKeyCheck() {
		super(KeySystem.class);
	}

	@Override
	protected void check(KeySystem system, Findings findings) {
		EffectiveSystem effective = EffectiveSystem.of(system);
		for (Collection<? extends Merged<?, ?>> kind : List.of(effective.keys(), effective.touches(), effective.holes(),
				effective.joints(), effective.rods())) {
			check(system, kind, findings);
		}
	}

	private static void check(KeySystem system, Collection<? extends Merged<?, ?>> kind, Findings findings) {
		Map<String, Titled> byName = new HashMap<>();
		for (Merged<?, ?> part : kind) {
			Titled first = byName.putIfAbsent(part.name(), part.definition());
			if (first != null && part.name() != null && part.definition().eContainer() == system) {
				report(part.definition(), first.eContainer() != system, findings);
			}
		}
	}

	private static void report(Titled part, boolean inherited, Findings findings) {
		findings.error(IssueCodes.DUPLICATE_KEY, Place.of(part, KeySystemPackage.Literals.TITLED__NAME),
				inherited ? Advice.of("duplicate-key.inherited", part.getName())
						: Advice.of("duplicate-key", part.getName()));
	}
}
