package padwright.commands;

import java.math.BigDecimal;

import padwright.engine.leak.Tester;
import padwright.workup.leak.PlanLeak;
import padwright.workup.report.LeakReport;
import padwright.workup.service.ServicePlan;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** Predicts what a leak tester will show. */
@Command(name = "leak", mixinStandardHelpOptions = true, exitCodeListHeading = "%nExit status:%n",
		exitCodeList = { "0:told", "1:the plan has errors", "2:the plan cannot be used at all" },
		description = "Predicts what every key leaks as it was felt, and after the pieces of the plan are placed, the "
				+ "worst first. A model of a thin slit: the tester decides.")
final class LeakCommand extends PlanReport {

	@Mixin
	private TesterOptions options;

	@Override
	int report(ServicePlan plan) {
		Tester tester = options.tester(plan);
		BigDecimal celsius = options.celsius(plan);
		PlanLeak leak = PlanLeak.of(SolvedPlan.solve(plan, err()), tester);
		print(LeakJson.of(leak, celsius), out -> TextTable.print(out, LeakReport.of(leak, celsius)));
		return ExitStatus.CLEAN;
	}
}
