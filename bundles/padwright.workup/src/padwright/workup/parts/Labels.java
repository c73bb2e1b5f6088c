package padwright.workup.parts;

import padwright.model.keysystem.Titled;
import padwright.model.systems.EffectiveKey;
import padwright.workup.service.ServicePlan;

/** What things are called on paper. */
public final class Labels {

	private Labels() {
	}

	/** The label of a key of the plan's system, or its name where it has none. */
	public static String ofKey(ServicePlan plan, String name) {
		return plan.system().keys().stream().filter(key -> key.name().equals(name)).findFirst()
				.map(EffectiveKey::label).orElse(name);
	}

	/** The label, or the name where there is none. */
	public static String of(Titled titled) {
		return titled.getLabel() == null ? titled.getName() : titled.getLabel();
	}
}
