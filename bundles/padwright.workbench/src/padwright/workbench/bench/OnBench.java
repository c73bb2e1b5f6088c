package padwright.workbench.bench;

import java.util.Optional;

import padwright.workup.service.KeyJob;

/**
 * What the views show: a plan or a key system, and the key that is chosen in it.
 *
 * @param work nothing where no such text is open
 * @param key the name of the chosen key
 */
public record OnBench(Optional<Workpiece> work, Optional<String> key) {

	static final OnBench NOTHING = new OnBench(Optional.empty(), Optional.empty());

	/** The plan, if it is one. */
	public Optional<PlanOnBench> plan() {
		return work.filter(PlanOnBench.class::isInstance).map(PlanOnBench.class::cast);
	}

	/** The row of the chosen key in the plan. */
	public Optional<KeyJob> row() {
		return plan().flatMap(open -> key.flatMap(open::row));
	}
}
