package padwright.workup.solve;

import java.util.List;

import padwright.workup.service.ServicePlan;

/** The answers for all rows of a plan, in its order. */
public record PlanSolution(ServicePlan plan, List<KeySolution> keys) {

	public PlanSolution {
		keys = List.copyOf(keys);
	}
}
