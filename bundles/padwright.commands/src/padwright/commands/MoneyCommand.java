package padwright.commands;

import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.concurrent.Callable;

import padwright.workup.money.PlanMoney;
import padwright.workup.report.MoneyReport;
import padwright.workup.report.Report;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Tells of estimates and invoices. */
@Command(name = "money", mixinStandardHelpOptions = true, exitCodeListHeading = "%nExit status:%n",
		exitCodeList = { "0:told", "1:a file cannot be read and was left out, or numbers of invoices are missing or stand twice",
				"2:there is no plan to tell from" },
		description = "For a plan: its estimate option by option, what was agreed, the invoice and by what it differs, what was "
				+ "paid before. For a folder: all invoices by number, the numbers that are missing or stand twice, and the next "
				+ "one. Each line is rounded to hundredths before it is added, the tax once on the sum.")
final class MoneyCommand implements Callable<Integer> {

	@Parameters(paramLabel = "PLAN|FOLDER",
			description = "A .plan file (FILE#NAME for one of several plans in it), or a folder of them with all below.")
	private Path place;

	@Option(names = "--json", description = "Print the answer for programs.")
	private boolean json;

	@Spec
	private CommandSpec spec;

	@Override
	public Integer call() {
		if (Files.isDirectory(place)) {
			FolderPlans plans = FolderPlans.in(place, spec.commandLine().getErr());
			print(MoneyJson.of(plans.plans()), MoneyReport.of(plans.plans()));
			return MoneyJson.isGapless(plans.plans()) ? plans.status() : ExitStatus.FINDINGS;
		}
		PlanMoney money = new PlanMoney(LoadedShop.around(place).plan());
		print(MoneyJson.of(money), MoneyReport.of(money));
		return ExitStatus.CLEAN;
	}

	private void print(Map<String, Object> forPrograms, Report forPeople) {
		PrintWriter out = spec.commandLine().getOut();
		if (json) {
			Json.print(out, forPrograms);
		} else {
			TextTable.print(out, forPeople);
			out.flush();
		}
	}
}
