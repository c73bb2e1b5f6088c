package padwright.commands;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Optional;
import java.util.concurrent.Callable;

import padwright.workup.forecast.ShopForecast;
import padwright.workup.report.ForecastReport;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Looks ahead from the plans of past services. */
@Command(name = "forecast", mixinStandardHelpOptions = true, exitCodeListHeading = "%nExit status:%n",
		exitCodeList = { "0:told", "1:a file cannot be read and was left out", "2:there is no plan to tell from" },
		description = "Tells how many pads each player will tear by the next yearly service, from the pads found torn "
				+ "in dated plans, and which materials are past their age or will be within a year.")
final class ForecastCommand implements Callable<Integer> {

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
		print(ShopForecast.of(plans.plans(), Optional.ofNullable(day).orElseGet(LocalDate::now)));
		return plans.status();
	}

	private void print(ShopForecast forecast) {
		PrintWriter out = spec.commandLine().getOut();
		if (json) {
			Json.print(out, ForecastJson.of(forecast));
		} else {
			TextTable.print(out, ForecastReport.of(forecast));
			out.flush();
		}
	}
}
