package padwright.workup.next;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;

import padwright.workup.job.JobRecord;
import padwright.workup.service.ServicePlan;

/**
 * What is next at a bench.
 *
 * @param today the day it is told for
 * @param steps by the promised day, those without one last; then by plan, and in the order of {@link NextStep.Kind}
 * @param silent how many plans say nothing of a job
 */
public record NextSteps(LocalDate today, List<NextStep> steps, int silent) {

	private static final Comparator<NextStep> BY_DUE = Comparator
			.comparing((NextStep step) -> step.due().orElse(LocalDate.MAX)).thenComparing(NextStep::plan)
			.thenComparing(NextStep::kind);

	public NextSteps {
		steps = List.copyOf(steps);
	}

	/** For one plan, whether it has a diary or not. */
	public static NextSteps of(ServicePlan plan, LocalDate today) {
		return new NextSteps(today, new PlanSteps(plan, today).steps(), 0);
	}

	/** For a shop: only plans with a diary, since nobody can tell whether the others are long at home. */
	public static NextSteps of(Collection<ServicePlan> plans, LocalDate today) {
		List<NextStep> steps = new ArrayList<>();
		int silent = 0;
		for (ServicePlan plan : plans) {
			if (JobRecord.of(plan.plan()).isKept()) {
				steps.addAll(new PlanSteps(plan, today).steps());
			} else {
				silent++;
			}
		}
		steps.sort(BY_DUE);
		return new NextSteps(today, steps, silent);
	}
}
