package padwright.commands;

import java.nio.file.Path;
import java.util.concurrent.Callable;

import padwright.paper.film.FilmSheet;
import padwright.paper.film.FilmSheetPages;
import padwright.paper.plan.PlanFilmSheet;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Draws the film cutting sheet of a plan. */
@Command(name = "film", mixinStandardHelpOptions = true, exitCodeListHeading = "%nExit status:%n",
		exitCodeList = { "0:the sheet was drawn", "1:it was drawn, but the plan has errors",
				"2:the plan cannot be used at all" },
		description = "Draws every partial piece of a plan at full size, nested on discs, with the counts of film to "
				+ "cut, as one PDF and an SVG for each page.")
final class FilmCommand implements Callable<Integer>, DrawsPaper {

	@Parameters(paramLabel = "PLAN", description = "A .plan file; FILE#NAME for one of several plans in it.")
	private Path file;

	@Mixin
	private PaperOptions paper;

	@Spec
	private CommandSpec spec;

	@Override
	public Integer call() {
		SolvedPlan plan = SolvedPlan.in(file, spec.commandLine().getErr());
		FilmSheet sheet = PlanFilmSheet.of(plan.solution());
		paper.write(plan.name() + "-film", sheet.title(),
				new FilmSheetPages(sheet, paper.paper()).pages(), spec.commandLine().getOut());
		return plan.status();
	}
}
