package padwright.commands;

import padwright.paper.plan.PlanInvoiceSheet;
import picocli.CommandLine.Command;

/** Draws the invoice for the player. */
@Command(name = "invoice", mixinStandardHelpOptions = true, exitCodeListHeading = "%nExit status:%n",
		exitCodeList = { "0:the page was drawn", "1:it was drawn, but the plan has errors; or the plan begins work that it "
				+ "does not say is done, and it was not drawn",
				"2:the plan cannot be used, or has no invoice" },
		description = "Draws the invoice of a plan for the player, under the letterhead of the shop: its number, lines, tax, what "
				+ "was paid before, what is to be paid, and every line by which it differs from the estimate that was agreed on.")
final class InvoiceCommand extends PlayerPaper {

	InvoiceCommand() {
		super("invoice", PlanInvoiceSheet::of);
	}
}
