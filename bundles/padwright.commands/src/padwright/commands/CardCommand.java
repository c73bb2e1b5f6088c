package padwright.commands;

import java.nio.file.Path;
import java.util.concurrent.Callable;

import padwright.engine.coupling.CircularCouplingException;
import padwright.paper.card.BenchCard;
import padwright.paper.card.BenchCardPages;
import padwright.paper.plan.PlanBenchCard;
import padwright.workup.solve.PlanSolution;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Draws the bench card of a plan. */
@Command(name = "card", mixinStandardHelpOptions = true, exitCodeListHeading = "%nExit status:%n",
		exitCodeList = { "0:the card was drawn", "1:it was drawn, but the plan has errors",
				"2:the plan cannot be used at all" },
		description = "Draws the bench card of a plan as one PDF and an SVG for each page.")
final class CardCommand implements Callable<Integer>, DrawsPaper {

	@Parameters(paramLabel = "PLAN", description = "A .plan file; FILE#NAME for one of several plans in it.")
	private Path file;

	@Mixin
	private PaperOptions paper;

	@Spec
	private CommandSpec spec;

	@Override
	public Integer call() {
		SolvedPlan plan = SolvedPlan.in(file, spec.commandLine().getErr());
		BenchCard card = card(plan.solution());
		paper.write(plan.name() + "-bench-card",
				card.title() + ", " + card.instrument() + " " + card.serial(),
				new BenchCardPages(card, paper.paper()).pages(), spec.commandLine().getOut());
		return plan.status();
	}

	private BenchCard card(PlanSolution solution) {
		try {
			return PlanBenchCard.of(solution);
		} catch (CircularCouplingException circle) {
			throw new InputException(file, "has no order of work: " + circle.getMessage());
		}
	}
}
