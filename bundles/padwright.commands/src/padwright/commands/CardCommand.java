package padwright.commands;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;

import padwright.drawing.scene.Scene;
import padwright.drawing.svg.SvgWriter;
import padwright.engine.coupling.CircularCouplingException;
import padwright.engine.levelling.Budget;
import padwright.language.files.SafeFile;
import padwright.paper.card.BenchCard;
import padwright.paper.card.BenchCardPages;
import padwright.paper.page.PaperSize;
import padwright.paper.pdf.PdfWriter;
import padwright.paper.plan.PlanBenchCard;
import padwright.workup.service.ServicePlan;
import padwright.workup.solve.PlanSolution;
import padwright.workup.solve.PlanSolver;
import padwright.workup.solve.WrittenAnswers;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Draws the bench card of a plan. */
@Command(name = "card", mixinStandardHelpOptions = true, exitCodeListHeading = "%nExit status:%n",
		exitCodeList = { "0:the card was drawn", "1:it was drawn, but the plan has errors",
				"2:the plan cannot be used at all" },
		description = "Draws the bench card of a plan as one PDF and an SVG for each page.")
final class CardCommand implements Callable<Integer> {

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
		LoadedShop shop = LoadedShop.around(file);
		ServicePlan plan = shop.plan();
		FindingLines.printErrors(spec.commandLine().getErr(), shop.shop().findings(shop.file()));
		if (plan.jobs().isEmpty()) {
			throw new InputException(file, "has no key row to draw; write key and a key of the system");
		}
		Progress progress = new Progress(spec.commandLine().getErr(), "solving", plan.jobs().size());
		PlanSolution solution = PlanSolver.solve(plan, WrittenAnswers.KEEP, Budget.unlimited(),
				job -> progress.next(job.name()));
		progress.end();
		write(plan.plan().getName() + "-bench-card", card(solution));
		return shop.hasErrors(shop.file()) ? ExitStatus.FINDINGS : ExitStatus.CLEAN;
	}

	private BenchCard card(PlanSolution solution) {
		try {
			return PlanBenchCard.of(solution);
		} catch (CircularCouplingException circle) {
			throw new InputException(file, "has no order of work: " + circle.getMessage());
		}
	}

	private void write(String name, BenchCard card) {
		List<Scene> pages = new BenchCardPages(card, paper).pages();
		try {
			Files.createDirectories(folder);
			save(name + ".pdf", pdf(card, pages));
			for (int page = 0; page < pages.size(); page++) {
				StringWriter svg = new StringWriter();
				SvgWriter.write(svg, pages.get(page));
				save(String.format(Locale.ROOT, "%s-%d.svg", name, page + 1),
						svg.toString().getBytes(StandardCharsets.UTF_8));
			}
		} catch (IOException failed) {
			throw new InputException(folder, "cannot take the card: " + Reasons.of(failed));
		}
	}

	private static byte[] pdf(BenchCard card, List<Scene> pages) throws IOException {
		ByteArrayOutputStream pdf = new ByteArrayOutputStream();
		PdfWriter.write(pdf, card.title() + ", " + card.instrument() + " " + card.serial(), pages);
		return pdf.toByteArray();
	}

	private void save(String name, byte[] content) throws IOException {
		Path target = folder.resolve(name);
		SafeFile.write(target, content);
		spec.commandLine().getOut().println(ShownPath.of(target));
	}
}
