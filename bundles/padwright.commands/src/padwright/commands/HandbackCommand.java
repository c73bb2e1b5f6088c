package padwright.commands;

import java.nio.file.Path;
import java.util.concurrent.Callable;

import padwright.paper.handback.HandBack;
import padwright.paper.handback.HandBackPages;
import padwright.paper.plan.PlanHandBack;
import padwright.paper.plan.UndoneWorkException;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Draws the page that goes home with the player. */
@Command(name = "handback", mixinStandardHelpOptions = true, exitCodeListHeading = "%nExit status:%n",
		exitCodeList = { "0:the page was drawn", "1:it was drawn, but the plan has errors; or it would promise more than "
				+ "the plan says is done, and was not drawn",
				"2:the plan cannot be used at all" },
		description = "Draws the page for the player, in plain words: what was done, what is in the instrument, care, "
				+ "what to expect, when to come back. Only what the plan says is done stands on it; while work is begun and "
				+ "not said as done there is no page, but the list of what is open.")
final class HandbackCommand implements Callable<Integer>, DrawsPaper {

	@Parameters(paramLabel = "PLAN", description = "A .plan file; FILE#NAME for one of several plans in it.")
	private Path file;

	@Mixin
	private PaperOptions paper;

	@Spec
	private CommandSpec spec;

	@Override
	public Integer call() {
		SolvedPlan plan = SolvedPlan.in(file, spec.commandLine().getErr());
		try {
			HandBack page = PlanHandBack.of(plan.solution());
			PlayerPaper.tell(page.head().letterhead(), spec.commandLine().getErr());
			paper.write(plan.name() + "-hand-back", page.title(),
					new HandBackPages(page, paper.paper()).pages(), spec.commandLine().getOut());
			return plan.status();
		} catch (UndoneWorkException undone) {
			return PlayerPaper.refuse(plan.name(), undone, spec.commandLine().getErr());
		}
	}
}
