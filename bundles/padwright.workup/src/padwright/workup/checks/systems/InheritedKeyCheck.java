package padwright.workup.checks.systems;

import java.util.Set;
import java.util.stream.Collectors;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;

import padwright.model.Present;
import padwright.model.keysystem.Key;
import padwright.model.keysystem.KeyChange;
import padwright.model.keysystem.KeyRemoval;
import padwright.model.keysystem.KeySystem;
import padwright.model.keysystem.KeySystemPackage;
import padwright.model.systems.EffectiveKey;
import padwright.model.systems.EffectiveSystem;
import padwright.workup.checks.Advice;
import padwright.workup.checks.Check;
import padwright.workup.checks.Findings;
import padwright.workup.checks.IssueCodes;
import padwright.workup.checks.Place;

/** Only inherited keys are changed and removed. */
public final class InheritedKeyCheck extends Check<KeySystem> {

	public InheritedKeyCheck() {
		super(KeySystem.class);
	}

	@Override
	protected void check(KeySystem system, Findings findings) {
		Set<Key> inherited = Present.of(system.getBase()).map(EffectiveSystem::of).stream()
				.flatMap(base -> base.keys().stream()).map(EffectiveKey::definition).collect(Collectors.toSet());
		for (KeyChange change : system.getChanges()) {
			check(change, change.getKey(), KeySystemPackage.Literals.KEY_CHANGE__KEY, inherited, findings);
		}
		for (KeyRemoval removal : system.getRemovals()) {
			check(removal, removal.getKey(), KeySystemPackage.Literals.KEY_REMOVAL__KEY, inherited, findings);
		}
	}

	private static void check(EObject element, Key target, EReference reference, Set<Key> inherited,
			Findings findings) {
		Present.of(target).filter(key -> !inherited.contains(key))
				.ifPresent(key -> findings.error(IssueCodes.KEY_NOT_INHERITED, Place.of(element, reference),
						Advice.of(IssueCodes.KEY_NOT_INHERITED, key.getName())));
	}
}
