package padwright.commands;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;

import padwright.language.edit.PlanFile;
import padwright.language.shop.ShopFinding;
import padwright.workup.report.SolutionReport;
import padwright.workup.service.ServicePlan;
import padwright.workup.solve.KeySolution;
import padwright.workup.solve.PlanSolution;
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

	@Parameters(paramLabel = "PLAN", description = "A .plan file; FILE#NAME for one of several plans in it.")
	private Path file;

	@Option(names = "--write", description = "Put the answers into the plan; what it holds already stays.")
	private boolean write;

	@Option(names = "--replace", description = "With --write, replace the answers that the plan holds already.")
	private boolean replace;

	@Option(names = "--json", description = "Print the answers for programs.")
	private boolean json;

	@Spec
	private CommandSpec spec;

	@Override
	public Integer call() {
		LoadedShop shop = LoadedShop.around(file);
		ServicePlan plan = shop.plan();
		List<ShopFinding> errors = shop.errors(plan);
		FindingLines.print(spec.commandLine().getErr(), errors);
		PlanSolution solution = SolvedPlan.solve(plan, written(), spec.commandLine().getErr());
		if (json) {
			Json.print(spec.commandLine().getOut(), SolutionJson.of(solution));
		} else {
			TextTable.print(spec.commandLine().getOut(), SolutionReport.of(solution));
		}
		if (write) {
			write(shop, solution);
		}
		boolean allSolved = solution.keys().stream().map(KeySolution::unsolved).allMatch(List::isEmpty);
		return allSolved && errors.isEmpty() ? ExitStatus.CLEAN : ExitStatus.FINDINGS;
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
