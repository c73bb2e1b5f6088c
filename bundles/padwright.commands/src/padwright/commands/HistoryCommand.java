package padwright.commands;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Optional;
import java.util.concurrent.Callable;

import padwright.workup.history.ShopHistory;
import padwright.workup.report.HistoryReport;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Looks back over the plans of past services. */
@Command(name = "history", mixinStandardHelpOptions = true, exitCodeListHeading = "%nExit status:%n",
		exitCodeList = { "0:told", "1:a file cannot be read and was left out", "2:there is no plan to tell from" },
		description = "Tells of each instrument, key by key, what became of its pads from service to service: which moved "
				+ "and tore, and how their widest gap goes over the years; when each player is due; and the "
				+ "stiffness of each pad article that the rounds at the bench tell. A model: the feeler decides.")
final class HistoryCommand implements Callable<Integer> {

	@Parameters(paramLabel = "FOLDER", description = "A folder of .plan files, with all folders below.")
	private Path folder;

	@Option(names = "--on", paramLabel = "DATE", converter = Day.class,
			description = "The day to tell from, as in 2026-03-02 (default: today).")
	private LocalDate day;

	@Option(names = "--json", description = "Print the answer for programs.")
	private boolean json;

	@Spec
	private CommandSpec spec;

	@Override
	public Integer call() {
		FolderPlans plans = FolderPlans.in(folder, spec.commandLine().getErr());
		ShopHistory history = ShopHistory.of(plans.plans(), Optional.ofNullable(day).orElseGet(LocalDate::now));
		PrintWriter out = spec.commandLine().getOut();
		if (json) {
			Json.print(out, HistoryJson.of(history));
		} else {
			TextTable.print(out, HistoryReport.of(history));
			out.flush();
		}
		return plans.status();
	}
}
