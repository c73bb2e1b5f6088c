package padwright.workup.checks.systems;

import java.util.Optional;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;

import padwright.model.Resolved;
import padwright.model.keysystem.KeySystem;
import padwright.model.keysystem.Titled;
import padwright.model.systems.EffectiveSystem;
import padwright.workup.checks.Advice;
import padwright.workup.checks.Check;
import padwright.workup.checks.Findings;
import padwright.workup.checks.IssueCodes;
import padwright.workup.checks.Place;

/** Only what is inherited is changed and removed. */
public final class InheritedCheck extends Check<KeySystem> {

	public InheritedCheck() {
		super(KeySystem.class);
	}

	@Override
	protected void check(KeySystem system, Findings findings) {
		Optional<EffectiveSystem> base = Resolved.of(system.getBase()).map(EffectiveSystem::of);
		system.getChanges().forEach(change -> check(change, base, findings));
		system.getRemovals().forEach(removal -> check(removal, base, findings));
	}

	/** What it changes or removes is the one reference that is its kind's own; the removal of a note has none. */
	private static void check(EObject element, Optional<EffectiveSystem> base, Findings findings) {
		for (EReference reference : element.eClass().getEReferences()) {
			Resolved.of((Titled) element.eGet(reference))
					.filter(target -> base.filter(inherited -> inherited.has(target)).isEmpty())
					.ifPresent(target -> findings.error(IssueCodes.NOT_INHERITED, Place.of(element, reference),
							Advice.of(IssueCodes.NOT_INHERITED, target.getName())));
		}
	}
}
