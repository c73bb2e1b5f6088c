package padwright.commands;

import java.util.LinkedHashMap;
import java.util.Map;

import padwright.engine.coupling.CircularCouplingException;
import padwright.workup.service.ServicePlan;

/** Tells of keys that close each other in a circle, in place of an answer. */
final class CircleReport {

	private CircleReport() {
	}

	/** @return the exit status */
	static int print(PlanReport command, ServicePlan plan, CircularCouplingException circle) {
		command.err().println(plan.plan().getName() + ": " + circle.getMessage()
				+ "; no order of work can regulate them: take one of these couplings away");
		Map<String, Object> json = new LinkedHashMap<>();
		json.put("plan", plan.plan().getName());
		json.put("circle", circle.keys());
		command.print(json, out -> { });
		return ExitStatus.FINDINGS;
	}
}
