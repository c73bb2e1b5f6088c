package padwright.commands;

import java.io.PrintWriter;
import java.time.Duration;

import padwright.engine.levelling.Budget;
import padwright.workup.service.ServicePlan;
import padwright.workup.solve.PlanSolution;
import padwright.workup.solve.PlanSolver;
import padwright.workup.solve.WrittenAnswers;
import picocli.CommandLine.Option;

/** How long a plan may be searched for its answers. */
final class SearchTime {

	@Option(names = "--seconds", paramLabel = "N", defaultValue = "20",
			description = "Longest search for one key (default ${DEFAULT-VALUE}); then the best found is given, with "
					+ "what is known of the optimum.")
	private int seconds;

	void requireSome() {
		if (seconds < 1) {
			throw new InputException("--seconds " + seconds + " leaves no time to search");
		}
	}

	/** Solves a plan within the time, telling {@code err} how far it is. */
	PlanSolution solve(ServicePlan plan, WrittenAnswers written, PrintWriter err) {
		requireSome();
		Progress progress = new Progress(err, "solving", plan.jobs().size());
		PlanSolution solution = PlanSolver.solve(plan, written, Budget.ofTime(Duration.ofSeconds(seconds)),
				job -> progress.next(job.name()));
		progress.end();
		return solution;
	}
}
