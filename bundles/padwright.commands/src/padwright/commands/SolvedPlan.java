package padwright.commands;

import java.io.PrintWriter;
import java.nio.file.Path;

import padwright.engine.levelling.Budget;
import padwright.workup.service.ServicePlan;
import padwright.workup.solve.PlanSolution;
import padwright.workup.solve.PlanSolver;
import padwright.workup.solve.WrittenAnswers;

/**
 * A plan that a command was given, solved; answers that the plan notes keep the film they have taken.
 *
 * @param shop around it
 */
record SolvedPlan(LoadedShop shop, PlanSolution solution) {

	/** Solves the plan in {@code file}, and tells its findings of error level, and progress, on {@code err}. */
	static SolvedPlan in(Path file, PrintWriter err) {
		LoadedShop shop = LoadedShop.around(file);
		ServicePlan plan = shop.plan();
		FindingLines.printErrors(err, shop.shop().findings(shop.file()));
		if (plan.jobs().isEmpty()) {
			throw new InputException(file, "has no key row; write key and a key of the system");
		}
		return new SolvedPlan(shop, solve(plan, err));
	}

	/** The answers for one plan. */
	static PlanSolution solve(ServicePlan plan, PrintWriter err) {
		Progress progress = new Progress(err, "solving", plan.jobs().size());
		PlanSolution solution = PlanSolver.solve(plan, WrittenAnswers.KEEP, Budget.unlimited(),
				job -> progress.next(job.name()));
		progress.end();
		return solution;
	}

	/** The plan's name, for files. */
	String name() {
		return solution.plan().plan().getName();
	}

	/** {@link ExitStatus#FINDINGS} if the plan has errors. */
	int status() {
		return shop.hasErrors(shop.file()) ? ExitStatus.FINDINGS : ExitStatus.CLEAN;
	}
}
