package padwright.workup.checks.systems;

import org.eclipse.emf.ecore.EObject;

import padwright.model.Present;
import padwright.model.keysystem.Coupling;
import padwright.model.keysystem.Key;
import padwright.model.keysystem.KeySystem;
import padwright.model.keysystem.KeySystemPackage;
import padwright.model.keysystem.Posture;
import padwright.model.systems.EffectiveKey;
import padwright.model.systems.EffectiveSystem;
import padwright.workup.checks.Advice;
import padwright.workup.checks.Check;
import padwright.workup.checks.Findings;
import padwright.workup.checks.IssueCodes;
import padwright.workup.checks.Place;

/** A coupling leads from a key that is open at rest to another of the same system. */
public final class DrivenKeyCheck extends Check<KeySystem> {

	public DrivenKeyCheck() {
		super(KeySystem.class);
	}

	@Override
	protected void check(KeySystem system, Findings findings) {
		EffectiveSystem effective = EffectiveSystem.of(system);
		for (EffectiveKey driver : effective.keys()) {
			for (Coupling coupling : driver.closes()) {
				check(system, effective, driver, coupling, findings);
			}
		}
	}

	private static void check(KeySystem system, EffectiveSystem effective, EffectiveKey driver, Coupling coupling,
			Findings findings) {
		Place place = place(system, coupling);
		Key driven = Present.of(coupling.getDriven()).orElse(null);
		if (driven == null) {
			return;
		}
		EffectiveKey target = effective.key(driven).orElse(null);
		if (target == null) {
			findings.error(IssueCodes.DRIVEN_KEY_MISSING, place, Advice.of(IssueCodes.DRIVEN_KEY_MISSING,
					driver.name(), driven.getName(), system.getName()));
		} else if (driver.posture() == Posture.CLOSED || target.posture() == Posture.CLOSED) {
			findings.error(IssueCodes.CLOSED_KEY_COUPLED, place, closedKey(driver, target));
		}
	}

	private static Advice closedKey(EffectiveKey driver, EffectiveKey driven) {
		return driver.posture() == Posture.CLOSED
				? Advice.of("closed-key-coupled.driver", driver.name(), driven.name())
				: Advice.of("closed-key-coupled.driven", driver.name(), driven.name());
	}

	/** At the coupling if the system says it itself, else at the system that made an inherited one wrong. */
	private static Place place(KeySystem system, Coupling coupling) {
		for (EObject owner = coupling; owner != null; owner = owner.eContainer()) {
			if (owner == system) {
				return Place.of(coupling, KeySystemPackage.Literals.COUPLING__DRIVEN);
			}
		}
		return Place.of(system, KeySystemPackage.Literals.TITLED__NAME);
	}
}
