package padwright.commands;

import java.math.BigDecimal;
import java.util.Map;
import java.util.Optional;

import padwright.engine.leak.Tester;
import padwright.workup.harm.PlanHarm;
import padwright.workup.leak.PlanLeak;
import padwright.workup.report.HarmReport;
import padwright.workup.report.LeakReport;
import padwright.workup.service.ServicePlan;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Predicts what a leak tester will show. */
@Command(name = "leak", mixinStandardHelpOptions = true, exitCodeListHeading = "%nExit status:%n",
		exitCodeList = { "0:told", "1:the plan has errors", "2:the plan cannot be used at all" },
		description = "Predicts what every key leaks as it was felt, and after the pieces of the plan are placed, the "
				+ "worst first. A model of a thin slit: the tester decides. With --notes what every leak does to the notes, too.")
final class LeakCommand extends PlanReport {

	@Mixin
	private TesterOptions options;

	@Option(names = "--notes", description = "Tell what every pad does to every note by leaking as it was felt: how much "
			+ "weaker and sharper each gets, and which notes to play to hear it. Needs the bore of the key system.")
	private boolean notes;

	@Override
	int report(ServicePlan plan) {
		Tester tester = options.tester(plan);
		BigDecimal celsius = options.celsius(plan);
		PlanLeak leak = PlanLeak.of(SolvedPlan.solve(plan, err()), tester);
		Optional<PlanHarm> harm = notes ? Optional.of(harm(plan)) : Optional.empty();
		Map<String, Object> json = LeakJson.of(leak, celsius);
		harm.ifPresent(told -> json.put("harm", HarmJson.of(told)));
		print(json, out -> {
			TextTable.print(out, LeakReport.of(leak, celsius));
			harm.ifPresent(told -> {
				out.println();
				TextTable.print(out, HarmReport.of(told));
			});
		});
		return ExitStatus.CLEAN;
	}

	private PlanHarm harm(ServicePlan plan) {
		if (plan.plan().getSystem() == null) {
			throw new InputException(file(), "names no key system, so no note can be told of");
		}
		return PlanHarm.of(plan, SoundSystem.of(plan.plan().getSystem(), file(), err()));
	}
}
