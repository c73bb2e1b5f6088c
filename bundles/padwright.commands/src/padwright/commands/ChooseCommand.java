package padwright.commands;

import padwright.workup.choose.PadChoice;
import padwright.workup.inspection.RecommendedWork;
import padwright.workup.report.ChoiceLines;
import padwright.workup.service.ServicePlan;
import picocli.CommandLine.Command;

/** Tells which pads suit an instrument and its player. */
@Command(name = "choose", mixinStandardHelpOptions = true, exitCodeListHeading = "%nExit status:%n",
		exitCodeList = { "0:told", "1:the plan has errors", "2:the plan cannot be used at all, or names no stock" },
		description = "Tells what to put right before padding, and which pads in stock suit the instrument, each key and "
				+ "the player, with the reasons for and against each. Reasons and their weights are the prefer and avoid "
				+ "lines of the stock.")
final class ChooseCommand extends PlanReport {

	@Override
	int report(ServicePlan plan) {
		PadChoice choice = PadChoice.of(plan).orElseThrow(() -> new InputException(
				"the plan names no stock to choose from: write with and its name behind the serial number"));
		if (choice.plan().stock().filter(stock -> stock.getPads().isEmpty()).isPresent()) {
			throw new InputException("the stock has no pads to choose from");
		}
		print(ChoiceJson.of(choice, RecommendedWork.of(plan)),
				out -> TextTable.print(out, ChoiceLines.of(choice, RecommendedWork.of(plan))));
		return ExitStatus.CLEAN;
	}
}
