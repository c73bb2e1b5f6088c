package padwright.commands;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.concurrent.Callable;

import padwright.engine.levelling.Budget;
import padwright.language.edit.PlanFile;
import padwright.workup.service.ServicePlan;
import padwright.workup.solve.KeySolution;
import padwright.workup.solve.PlanSolution;
import padwright.workup.solve.PlanSolver;
import padwright.workup.solve.WrittenAnswers;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Solves the shims of every key of a plan. */
@Command(name = "solve", mixinStandardHelpOptions = true, exitCodeListHeading = "%nExit status:%n",
		exitCodeList = { "0:every key was solved", "1:the plan has errors, or a key could not be solved",
				"2:the plan cannot be used at all" },
		description = "Solves full shims and partial shims for every key of a plan. The feeler decides: it is a model.")
final class SolveCommand implements Callable<Integer> {

	@Parameters(paramLabel = "PLAN", description = "A .plan file.")
	private Path file;

	@Option(names = "--write", description = "Put the answers into the plan; what it holds already stays.")
	private boolean write;

	@Option(names = "--replace", description = "With --write, replace the answers that the plan holds already.")
	private boolean replace;

	@Option(names = "--json", description = "Print the answers for programs.")
	private boolean json;

	@Option(names = "--seconds", paramLabel = "N", defaultValue = "20",
			description = "Longest search for one key (default ${DEFAULT-VALUE}); then the best found is given, with "
					+ "what is known of the optimum.")
	private int seconds;

	@Spec
	private CommandSpec spec;

	@Override
	public Integer call() {
		if (seconds < 1) {
			throw new InputException("--seconds " + seconds + " leaves no time to search");
		}
		LoadedShop shop = LoadedShop.around(file);
		ServicePlan plan = shop.plan();
		FindingLines.printErrors(spec.commandLine().getErr(), shop.shop().findings(shop.file()));
		PlanSolution solution = solve(plan);
		if (json) {
			Json.print(spec.commandLine().getOut(), SolutionJson.of(solution));
		} else {
			SolutionTable.print(spec.commandLine().getOut(), solution);
		}
		if (write) {
			write(shop, solution);
		}
		boolean allSolved = solution.keys().stream().map(KeySolution::unsolved).allMatch(List::isEmpty);
		return allSolved && !shop.hasErrors(shop.file()) ? ExitStatus.CLEAN : ExitStatus.FINDINGS;
	}

	private PlanSolution solve(ServicePlan plan) {
		Progress progress = new Progress(spec.commandLine().getErr(), "solving", plan.jobs().size());
		PlanSolution solution = PlanSolver.solve(plan, written(), Budget.ofTime(Duration.ofSeconds(seconds)),
				job -> progress.next(job.name()));
		progress.end();
		return solution;
	}

	private WrittenAnswers written() {
		return replace ? WrittenAnswers.REPLACE : WrittenAnswers.KEEP;
	}

	private void write(LoadedShop shop, PlanSolution solution) {
		PrintWriter err = spec.commandLine().getErr();
		try {
			PlanFile.Written result = PlanFile.write(Language.services(), shop.shop(), shop.file(), solution, written());
			err.println(result.changes() == 0 ? "nothing to write: the plan holds every answer already"
					: "wrote " + result.changes() + " answers into " + ShownPath.of(shop.file()) + "; the old text is in "
							+ ShownPath.of(result.backup().orElseThrow()));
		} catch (IOException failed) {
			throw new InputException(shop.file(), "was not written: " + Reasons.of(failed));
		}
	}
}
