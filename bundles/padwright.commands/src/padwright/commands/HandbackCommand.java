package padwright.commands;

import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;

import padwright.paper.handback.HandBack;
import padwright.paper.handback.HandBackPages;
import padwright.paper.page.PaperSize;
import padwright.paper.plan.PlanHandBack;
import padwright.workup.parts.RowWork;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
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

	@Option(names = { "-o", "--output" }, paramLabel = "DIR", defaultValue = ".",
			description = "Folder for the files, made if missing (default: the working directory).")
	private Path folder;

	@Option(names = "--paper", defaultValue = "A4", description = "A4 or Letter (default ${DEFAULT-VALUE}).")
	private PaperSize paper;

	@Spec
	private CommandSpec spec;

	@Override
	public Integer call() {
		SolvedPlan plan = SolvedPlan.in(file, spec.commandLine().getErr());
		warnOfUnnoted(RowWork.of(plan.solution()));
		HandBack page = PlanHandBack.of(plan.solution());
		new PageFiles(folder, spec.commandLine().getOut()).write(plan.name() + "-hand-back", page.title(),
				new HandBackPages(page, paper).pages());
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
