package padwright.workup.mechanism;

import java.util.ArrayList;
import java.util.List;

import org.eclipse.emf.ecore.EObject;

import padwright.model.Resolved;
import padwright.model.keysystem.Fingering;
import padwright.model.keysystem.KeySystem;
import padwright.model.keysystem.KeySystemPackage;
import padwright.model.systems.EffectiveSystem;
import padwright.workup.checks.Check;
import padwright.workup.checks.Findings;
import padwright.workup.checks.Place;

/**
 * The fingers of a system can do what its fingerings ask for, and its keys are there for something. What the system it
 * is based on shows already is told there.
 */
public final class MechanismCheck extends Check<KeySystem> {

	public MechanismCheck() {
		super(KeySystem.class);
	}

	@Override
	protected void check(KeySystem system, Findings findings) {
		List<Shortcoming> wanting = new ArrayList<>(Shortcomings.of(EffectiveSystem.of(system)));
		Resolved.of(system.getBase()).filter(base -> !EffectiveSystem.lineage(base).contains(system))
				.ifPresent(base -> wanting.removeAll(Shortcomings.of(EffectiveSystem.of(base))));
		wanting.forEach(each -> findings.add(each.severity(), each.code(), place(system, each.subject()),
				each.advice()));
	}

	/** At what the system says itself, else at its name. */
	private static Place place(KeySystem system, EObject subject) {
		if (subject.eContainer() != system) {
			return Place.of(system, KeySystemPackage.Literals.TITLED__NAME);
		}
		return Place.of(subject, subject instanceof Fingering ? KeySystemPackage.Literals.FINGERING__NOTE
				: KeySystemPackage.Literals.TITLED__NAME);
	}
}
