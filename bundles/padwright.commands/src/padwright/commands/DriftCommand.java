package padwright.commands;

import java.util.Optional;
import java.util.function.Supplier;

import padwright.engine.drift.Climate;
import padwright.workup.drift.PlanDrift;
import padwright.workup.report.DriftReport;
import padwright.workup.service.ServicePlan;
import picocli.CommandLine.Command;

/** Tells what the player's climate does to the pads. */
@Command(name = "drift", mixinStandardHelpOptions = true, exitCodeListHeading = "%nExit status:%n",
		exitCodeList = { "0:told", "1:the plan has errors", "2:the plan cannot be used at all, or says no climate" },
		description = "Tells how the height of each pad changes from the bench to the player's home, as an interval, "
				+ "against the seat. What is not known of a material is named. A model: the feeler decides.")
final class DriftCommand extends PlanReport {

	@Override
	int report(ServicePlan plan) {
		Climate bench = climate(() -> PlanDrift.bench(plan), "the stock says no climate of the bench: write "
				+ "bench 20 °C 45 %RH as its first line, with your figures");
		Climate home = climate(() -> PlanDrift.home(plan), "the plan says no climate of the player's home: write "
				+ "home 24 °C 60 %RH into player { }, with the player's figures");
		PlanDrift drift = PlanDrift.of(plan, bench, home);
		print(DriftJson.of(drift), out -> TextTable.print(out, DriftReport.of(drift)));
		return ExitStatus.CLEAN;
	}

	private static Climate climate(Supplier<Optional<Climate>> said, String missing) {
		try {
			return said.get().orElseThrow(() -> new InputException(missing));
		} catch (IllegalArgumentException impossible) {
			throw new InputException(impossible.getMessage());
		}
	}
}
