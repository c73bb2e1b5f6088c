package padwright.commands;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;

import padwright.model.plan.Document;
import padwright.model.plan.Plan;
import padwright.workup.parts.StockDraw;
import padwright.workup.report.StockReport;
import padwright.workup.service.ServicePlan;
import padwright.workup.solve.PlanSolution;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Tells what the plans of a shop draw from its stock. */
@Command(name = "stock", mixinStandardHelpOptions = true, exitCodeListHeading = "%nExit status:%n",
		exitCodeList = { "0:the stock was counted, short or not", "1:a plan has errors",
				"2:the folder cannot be used at all" },
		description = "Tells what all plans of a shop draw from its stock, what runs short, and what to reorder.")
final class StockCommand implements Callable<Integer> {

	@Parameters(paramLabel = "FOLDER", description = "A shop folder, a folder of plans, or one plan.")
	private Path folder;

	@Option(names = "--json", description = "Print the stock for programs.")
	private boolean json;

	@Spec
	private CommandSpec spec;

	private boolean errors;

	@Override
	public Integer call() {
		List<StockDraw> draws = StockDraw.of(solutions(LoadedShop.around(folder)));
		if (draws.isEmpty()) {
			throw new InputException(folder, "holds no plan with a stock; write with and a stock behind the plan's name");
		}
		PrintWriter out = spec.commandLine().getOut();
		if (json) {
			Json.print(out, StockJson.of(draws));
		} else {
			TextTable.print(out, StockReport.of(draws));
		}
		return errors ? ExitStatus.FINDINGS : ExitStatus.CLEAN;
	}

	private List<PlanSolution> solutions(LoadedShop shop) {
		PrintWriter err = spec.commandLine().getErr();
		List<PlanSolution> solutions = new ArrayList<>();
		for (Path file : shop.chosen()) {
			if (shop.shop().whyUnreadable(file).isPresent()) {
				FindingLines.print(err, shop.shop().findings(file));
				errors = true;
				continue;
			}
			List<Plan> plans = shop.shop().document(file).<List<Plan>>map(Document::getPlans).orElse(List.of());
			if (!plans.isEmpty() && !shop.errors(file).isEmpty()) {
				err.println(ShownPath.of(file) + " has errors, see check; what could be understood of it is counted");
				errors = true;
			}
			plans.forEach(plan -> solutions.add(SolvedPlan.solve(new ServicePlan(plan), err)));
		}
		return solutions;
	}
}
