package padwright.commands;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;

import padwright.drawing.scene.Scene;
import padwright.paper.plan.PaperExtension;
import padwright.workup.extensions.Added;
import padwright.workup.extensions.Extensions;
import padwright.workup.solve.PlanSolution;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** Draws a paper that an extension adds. */
@Command(name = "paper", mixinStandardHelpOptions = true, exitCodeListHeading = "%nExit status:%n",
		exitCodeList = { "0:the paper was drawn", "1:it was drawn, but the plan has errors",
				"2:there is no such paper, or it cannot be drawn of this plan" },
		description = "Draws a paper that an extension adds as one PDF and an SVG for each page; without a name, tells what "
				+ "papers there are.")
final class PaperCommand implements Callable<Integer> {

	@Parameters(index = "0", arity = "0..1", paramLabel = "NAME", description = "The paper.")
	private String name;

	@Parameters(index = "1", arity = "0..1", paramLabel = "PLAN",
			description = "A .plan file; FILE#NAME for one of several plans in it.")
	private Path file;

	@Mixin
	private PaperOptions paper;

	@Spec
	private CommandSpec spec;

	@Override
	public Integer call() {
		AddedByName<PaperExtension> papers = AddedByName.of("paper", PaperExtension.class);
		PrintWriter out = spec.commandLine().getOut();
		if (name == null) {
			papers.list(out);
			return ExitStatus.CLEAN;
		}
		Added<PaperExtension> added = papers.get(name);
		if (file == null) {
			throw new ParameterException(spec.commandLine(), "name the plan that it is to be drawn of");
		}
		SolvedPlan plan = SolvedPlan.in(file, spec.commandLine().getErr());
		List<Scene> pages = pages(added, plan.solution());
		paper.write(plan.name() + "-" + name, Extensions.installed().ask(added, added.thing()::title, name), pages, out);
		return plan.status();
	}

	private List<Scene> pages(Added<PaperExtension> added, PlanSolution solution) {
		try {
			return Extensions.installed().answer(added, IllegalArgumentException.class,
					() -> List.copyOf(added.thing().pages(solution, paper.paper())))
					.orElseThrow(() -> new InputException("the paper " + name + " was not drawn"));
		} catch (IllegalArgumentException refused) {
			throw new InputException(file, refused.getMessage());
		}
	}
}
