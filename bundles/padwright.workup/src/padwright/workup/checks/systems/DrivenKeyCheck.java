package padwright.workup.checks.systems;

import java.util.Optional;

import org.eclipse.emf.ecore.EObject;

import padwright.model.Resolved;
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

/** A coupling leads to a key of the same system that can be moved that way: an open one closed, a closed one opened. */
public final class DrivenKeyCheck extends Check<KeySystem> {

	public DrivenKeyCheck() {
		super(KeySystem.class);
	}

	@Override
	protected void check(KeySystem system, Findings findings) {
		EffectiveSystem effective = EffectiveSystem.of(system);
		for (EffectiveKey driver : effective.keys()) {
			driver.closes().forEach(closed -> driven(closed, system, effective, driver, findings)
					.filter(target -> target.posture() == Posture.CLOSED)
					.ifPresent(target -> report(IssueCodes.CLOSED_KEY_COUPLED, driver, target, closed, system, findings)));
			driver.opens().forEach(opened -> driven(opened, system, effective, driver, findings)
					.filter(target -> target.posture() == Posture.OPEN && !target.isLever())
					.ifPresent(target -> report(IssueCodes.OPEN_KEY_COUPLED, driver, target, opened, system, findings)));
			driver.holds().forEach(held -> driven(held, system, effective, driver, findings));
		}
	}

	private static Optional<EffectiveKey> driven(Coupling coupling, KeySystem system, EffectiveSystem effective,
			EffectiveKey driver, Findings findings) {
		Optional<Key> driven = Resolved.of(coupling.getDriven());
		Optional<EffectiveKey> target = driven.flatMap(effective::key);
		if (driven.isPresent() && target.isEmpty()) {
			findings.error(IssueCodes.DRIVEN_KEY_MISSING, place(system, coupling), Advice.of(
					IssueCodes.DRIVEN_KEY_MISSING, driver.name(), driven.get().getName(), system.getName()));
		}
		Resolved.of(coupling.getCondition()).filter(key -> effective.key(key).isEmpty())
				.ifPresent(key -> findings.error(IssueCodes.DRIVEN_KEY_MISSING, place(system, coupling),
						Advice.of("driven-key-missing.condition", driver.name(), key.getName(), system.getName())));
		return target;
	}

	private static void report(String code, EffectiveKey driver, EffectiveKey driven, Coupling coupling, KeySystem system,
			Findings findings) {
		findings.error(code, place(system, coupling), Advice.of(code, driver.name(), driven.name()));
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
