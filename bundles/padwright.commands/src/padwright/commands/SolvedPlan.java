package padwright.commands;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;

import padwright.language.shop.ShopFinding;
import padwright.workup.service.ServicePlan;
import padwright.workup.solve.PlanSolution;
import padwright.workup.solve.PlanSolver;
import padwright.workup.solve.WrittenAnswers;

/**
 * A plan that a command was given, solved; answers that the plan notes keep the film they have taken.
 *
 * @param hasErrors whether the plan, or what it draws on, has findings of error level
 */
record SolvedPlan(PlanSolution solution, boolean hasErrors) {

	/** Solves the plan in {@code file}, and tells its findings of error level, and progress, on {@code err}. */
	static SolvedPlan in(Path file, PrintWriter err) {
		return in(LoadedShop.around(file), err);
	}

	/** As {@link #in(Path, PrintWriter)}, for the one plan chosen in a shop. */
	static SolvedPlan in(LoadedShop shop, PrintWriter err) {
		ServicePlan plan = shop.plan();
		List<ShopFinding> errors = shop.errors(plan);
		FindingLines.print(err, errors);
		if (plan.jobs().isEmpty()) {
			throw new InputException(shop.file(), "has no key row; write key and a key of the system");
		}
		return new SolvedPlan(solve(plan, err), !errors.isEmpty());
	}

	/** The answers for one plan; those that it notes keep the film they have taken. */
	static PlanSolution solve(ServicePlan plan, PrintWriter err) {
		return solve(plan, WrittenAnswers.KEEP, err);
	}

	/** The answers for one plan, telling {@code err} how far it is. */
	static PlanSolution solve(ServicePlan plan, WrittenAnswers written, PrintWriter err) {
		Progress progress = new Progress(err, "solving", plan.jobs().size());
		PlanSolution solution = PlanSolver.solve(plan, written, job -> progress.next(job.name()));
		progress.end();
		return solution;
	}

	/** The plan's name, for files. */
	String name() {
		return solution.plan().plan().getName();
	}

	/** {@link ExitStatus#FINDINGS} if the plan has errors. */
	int status() {
		return hasErrors ? ExitStatus.FINDINGS : ExitStatus.CLEAN;
	}
}
