package padwright.workbench.bench;

import java.util.Optional;

import padwright.model.keysystem.Titled;
import padwright.workup.service.KeyJob;

/**
 * What the views show: a plan or a key system, and the key that is chosen in it.
 *
 * @param work nothing where no such text is open
 * @param key the name of the chosen key
 * @param part what a drawing was chosen in last, also where the text says nothing of it
 */
public record OnBench(Optional<Workpiece> work, Optional<String> key, Optional<Titled> part) {

	static final OnBench NOTHING = new OnBench(Optional.empty(), Optional.empty(), Optional.empty());

	/** Where nothing is chosen in a drawing. */
	OnBench(Optional<Workpiece> work, Optional<String> key) {
		this(work, key, Optional.empty());
	}

	/** The plan, if it is one. */
	public Optional<PlanOnBench> plan() {
		return work.filter(PlanOnBench.class::isInstance).map(PlanOnBench.class::cast);
	}

	/** The row of the chosen key in the plan. */
	public Optional<KeyJob> row() {
		return plan().flatMap(open -> key.flatMap(open::row));
	}
}
