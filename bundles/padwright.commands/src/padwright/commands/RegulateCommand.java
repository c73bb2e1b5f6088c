package padwright.commands;

import padwright.engine.coupling.CircularCouplingException;
import padwright.workup.regulate.PlanCouplings;
import padwright.workup.regulate.RegulationWork;
import padwright.workup.report.RegulationReport;
import padwright.workup.service.ServicePlan;
import picocli.CommandLine.Command;

/** Tells how to regulate linked keys. */
@Command(name = "regulate", mixinStandardHelpOptions = true, exitCodeListHeading = "%nExit status:%n",
		exitCodeList = { "0:told", "1:the plan has errors, or its keys close each other in a circle",
				"2:the plan cannot be used at all" },
		description = "Lists the couplings in the order of work with the cure for the light that the plan notes, and "
				+ "what the pieces and stacks of the plan will upset. The feeler decides: it is a model.")
final class RegulateCommand extends PlanReport {

	@Override
	int report(ServicePlan plan) {
		try {
			PlanCouplings.graph(plan);
		} catch (CircularCouplingException circle) {
			return CircleReport.print(this, plan, circle);
		}
		RegulationWork work = RegulationWork.of(SolvedPlan.solve(plan, err()));
		print(RegulationJson.of(work), out -> TextTable.print(out, RegulationReport.of(work)));
		return ExitStatus.CLEAN;
	}
}
