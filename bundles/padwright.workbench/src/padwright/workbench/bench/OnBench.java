package padwright.workbench.bench;

import java.util.Optional;

import padwright.workup.service.KeyJob;

/**
 * What the views show: a plan and the key that is chosen in it.
 *
 * @param plan nothing where no plan is open
 * @param key the name of the chosen key
 */
public record OnBench(Optional<PlanOnBench> plan, Optional<String> key) {

	static final OnBench NOTHING = new OnBench(Optional.empty(), Optional.empty());

	/** The row of the chosen key. */
	public Optional<KeyJob> row() {
		return plan.flatMap(open -> key.flatMap(open::row));
	}
}
