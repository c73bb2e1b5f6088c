package padwright.workup.checks.systems;

import java.util.Optional;
import java.util.stream.Stream;

import org.eclipse.emf.ecore.EObject;

import padwright.model.Present;
import padwright.model.keysystem.Coupling;
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

/** A coupling leads to another key of the same system, and has something to do there. */
public final class DrivenKeyCheck extends Check<KeySystem> {

	public DrivenKeyCheck() {
		super(KeySystem.class);
	}

	@Override
	protected void check(KeySystem system, Findings findings) {
		EffectiveSystem effective = EffectiveSystem.of(system);
		for (EffectiveKey driver : effective.keys()) {
			driver.closes().forEach(coupling -> {
				check(system, effective, driver, coupling, findings);
				driven(effective, coupling).filter(driven -> driven.posture() == Posture.CLOSED)
						.ifPresent(driven -> findings.error(IssueCodes.CLOSED_KEY_COUPLED, place(system, coupling),
								Advice.of(IssueCodes.CLOSED_KEY_COUPLED, driver.name(), driven.name())));
			});
			driver.opens().forEach(coupling -> {
				check(system, effective, driver, coupling, findings);
				driven(effective, coupling).filter(driven -> driven.posture() == Posture.OPEN && !driven.isLever())
						.ifPresent(driven -> findings.error(IssueCodes.OPEN_KEY_OPENED, place(system, coupling),
								Advice.of(IssueCodes.OPEN_KEY_OPENED, driver.name(), driven.name())));
			});
			driver.holds().forEach(coupling -> check(system, effective, driver, coupling, findings));
		}
	}

	private static Optional<EffectiveKey> driven(EffectiveSystem system, Coupling coupling) {
		return Present.of(coupling.getDriven()).flatMap(system::key);
	}

	private static void check(KeySystem system, EffectiveSystem effective, EffectiveKey driver, Coupling coupling,
			Findings findings) {
		Stream.of(coupling.getDriven(), coupling.getCondition())
				.flatMap(key -> Present.of(key).filter(present -> effective.key(present).isEmpty()).stream())
				.forEach(missing -> findings.error(IssueCodes.DRIVEN_KEY_MISSING, place(system, coupling),
						Advice.of(IssueCodes.DRIVEN_KEY_MISSING, driver.name(), missing.getName(), system.getName())));
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
