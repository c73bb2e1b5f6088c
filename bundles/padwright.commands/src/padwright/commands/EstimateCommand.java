package padwright.commands;

import padwright.paper.plan.PlanEstimateSheet;
import picocli.CommandLine.Command;

/** Draws the estimate for the player. */
@Command(name = "estimate", mixinStandardHelpOptions = true, exitCodeListHeading = "%nExit status:%n",
		exitCodeList = { "0:the page was drawn", "1:it was drawn, but the plan has errors",
				"2:the plan cannot be used, or has no estimate" },
		description = "Draws the estimate of a plan for the player, under the letterhead of the shop: what was found, each "
				+ "option with its lines, tax and total, and which one was agreed on.")
final class EstimateCommand extends PlayerPaper {

	EstimateCommand() {
		super("estimate", PlanEstimateSheet::of);
	}
}
