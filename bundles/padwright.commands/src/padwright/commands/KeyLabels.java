package padwright.commands;

import padwright.model.systems.EffectiveKey;
import padwright.workup.parts.Labels;
import padwright.workup.service.KeyJob;
import padwright.workup.service.ServicePlan;

/** Keys as people call them. */
final class KeyLabels {

	private KeyLabels() {
	}

	/** The label of a key of the plan's system, or its name where it has none. */
	static String of(ServicePlan plan, String name) {
		return Labels.ofKey(plan, name);
	}

	static String of(KeyJob job) {
		return job.key().map(EffectiveKey::label).orElse(job.name());
	}
}
