package padwright.workup.checks.systems;

import java.util.stream.Collectors;

import padwright.model.Resolved;
import padwright.model.keysystem.KeySystem;
import padwright.model.keysystem.KeySystemPackage;
import padwright.model.systems.EffectiveSystem;
import padwright.workup.checks.Advice;
import padwright.workup.checks.Check;
import padwright.workup.checks.Findings;
import padwright.workup.checks.IssueCodes;
import padwright.workup.checks.Place;

/** A system must not extend itself, directly or through others. */
public final class SystemCycleCheck extends Check<KeySystem> {

	public SystemCycleCheck() {
		super(KeySystem.class);
	}

	@Override
	protected void check(KeySystem system, Findings findings) {
		Resolved.of(system.getBase()).filter(base -> EffectiveSystem.lineage(base).contains(system))
				.ifPresent(base -> findings.error(IssueCodes.SYSTEM_CYCLE,
						Place.of(system, KeySystemPackage.Literals.KEY_SYSTEM__BASE), advice(system, base)));
	}

	private static Advice advice(KeySystem system, KeySystem base) {
		String circle = EffectiveSystem.lineage(base).stream().map(KeySystem::getName)
				.collect(Collectors.joining(", "));
		return Advice.of(IssueCodes.SYSTEM_CYCLE, system.getName(), circle);
	}
}
