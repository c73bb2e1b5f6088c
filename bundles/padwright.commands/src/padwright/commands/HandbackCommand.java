package padwright.commands;

import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;

import padwright.paper.handback.HandBack;
import padwright.paper.handback.HandBackPages;
import padwright.paper.plan.PlanHandBack;
import padwright.workup.parts.RowWork;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Draws the page that goes home with the player. */
@Command(name = "handback", mixinStandardHelpOptions = true, exitCodeListHeading = "%nExit status:%n",
		exitCodeList = { "0:the page was drawn", "1:it was drawn, but the plan has errors",
				"2:the plan cannot be used at all" },
		description = "Draws the page for the player, in plain words: what was done, what is in the instrument, care, "
				+ "what to expect, when to come back.")
final class HandbackCommand implements Callable<Integer> {

	@Parameters(paramLabel = "PLAN", description = "A .plan file.")
	private Path file;

	@Mixin
	private PaperOptions paper;

	@Spec
	private CommandSpec spec;

	@Override
	public Integer call() {
		SolvedPlan plan = SolvedPlan.in(file, spec.commandLine().getErr());
		warnOfUnnoted(RowWork.of(plan.solution()));
		HandBack page = PlanHandBack.of(plan.solution());
		paper.write(plan.name() + "-hand-back", page.title(),
				new HandBackPages(page, paper.paper()).pages(), spec.commandLine().getOut());
		return plan.status();
	}

	/** The page says what was done: it should be noted first. */
	private void warnOfUnnoted(List<RowWork> rows) {
		String unnoted = rows.stream().filter(row -> !row.stackNoted() && !row.piecesNoted())
				.map(row -> row.job().name()).collect(Collectors.joining(", "));
		if (!unnoted.isEmpty()) {
			spec.commandLine().getErr().println("the plan does not note yet what was fitted at " + unnoted
					+ "; the page says it as done: note it before the page goes out");
		}
	}
}
