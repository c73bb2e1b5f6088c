package padwright.commands;

import java.io.PrintWriter;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;

import padwright.drawing.scene.Scene;
import padwright.engine.quote.Labour;
import padwright.engine.quote.Quote;
import padwright.paper.plan.PlanQuoteSheet;
import padwright.paper.quote.QuotePages;
import padwright.paper.quote.QuoteSheet;
import padwright.workup.parts.PlanQuote;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Tells what a plan costs. */
@Command(name = "quote", mixinStandardHelpOptions = true, exitCodeListHeading = "%nExit status:%n",
		exitCodeList = { "0:the plan was quoted", "1:it was quoted, but the plan has errors",
				"2:the plan cannot be used at all" },
		description = "Tells what a plan costs: pads, discs and film at the prices of the stock, time and tax. Amounts "
				+ "are rounded to hundredths, halves up; what has no price is named and in no sum. With --pdf or --svg the "
				+ "quote is drawn on paper instead.")
final class QuoteCommand implements Callable<Integer>, DrawsPaper {

	@Parameters(paramLabel = "PLAN", description = "A .plan file; FILE#NAME for one of several plans in it.")
	private Path file;

	@Option(names = "--minutes", paramLabel = "M", description = "Time at the bench; needs --rate.")
	private BigDecimal minutes;

	@Option(names = "--rate", paramLabel = "R", description = "Money for an hour; needs --minutes.")
	private BigDecimal rate;

	@Option(names = "--tax", paramLabel = "P", defaultValue = "0",
			description = "Per cent on parts and time (default ${DEFAULT-VALUE}).")
	private BigDecimal tax;

	@Option(names = "--json", description = "Print the quote for programs.")
	private boolean json;

	@Option(names = "--pdf", description = "Draw the quote as a PDF.")
	private boolean pdf;

	@Option(names = "--svg", description = "Draw the quote as an SVG for each page.")
	private boolean svg;

	@Mixin
	private PaperOptions paper;

	@Spec
	private CommandSpec spec;

	@Override
	public boolean draws() {
		return pdf || svg;
	}

	@Override
	public Integer call() {
		Labour labour = labour();
		if (tax.signum() < 0) {
			throw new InputException("--tax " + tax.toPlainString() + " is below nothing; give per cent, as in --tax 19");
		}
		SolvedPlan plan = SolvedPlan.in(file, spec.commandLine().getErr());
		Quote quote = PlanQuote.of(plan.solution(), labour, tax);
		PrintWriter out = spec.commandLine().getOut();
		if (pdf || svg) {
			draw(PlanQuoteSheet.of(plan.solution().plan(), quote), plan.name() + "-quote", paper.files(out));
		} else if (json) {
			Json.print(out, QuoteText.json(plan.name(), quote));
		} else {
			QuoteText.print(out, plan.name(), quote);
		}
		return plan.status();
	}

	private void draw(QuoteSheet sheet, String name, PageFiles files) {
		List<Scene> pages = new QuotePages(sheet, paper.paper()).pages();
		if (pdf) {
			files.writePdf(name, sheet.title(), pages);
		}
		if (svg) {
			files.writeSvg(name, pages);
		}
	}

	private Labour labour() {
		if ((minutes == null) != (rate == null)) {
			throw new InputException("--minutes and --rate go together: time costs minutes times rate");
		}
		if (minutes == null) {
			return Labour.NONE;
		}
		if (minutes.signum() < 0 || rate.signum() < 0) {
			throw new InputException("--minutes and --rate cannot be below nothing");
		}
		return new Labour(minutes, rate);
	}
}
