package padwright.commands;

import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Optional;
import java.util.concurrent.Callable;

import padwright.workup.next.NextSteps;
import padwright.workup.report.NextReport;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Tells what there is to do next. */
@Command(name = "next", mixinStandardHelpOptions = true, exitCodeListHeading = "%nExit status:%n",
		exitCodeList = { "0:told", "1:a file cannot be read and was left out", "2:there is no plan to tell from" },
		description = "Tells what is next, from what the plans say alone: at which instrument and keys, at which stage, what "
				+ "waits for parts, for the next morning or for an agreed estimate, when it is due, and who wrote last. For a "
				+ "folder, all plans with a job in it.")
final class NextCommand implements Callable<Integer> {

	@Parameters(paramLabel = "PLAN|FOLDER", arity = "0..1", defaultValue = ".",
			description = "A .plan file (FILE#NAME for one of several plans in it), or a folder of them with all below "
					+ "(default: this folder).")
	private Path place;

	@Option(names = "--on", paramLabel = "DATE", converter = Day.class,
			description = "The day to tell for, as in 2026-03-02 (default: today).")
	private LocalDate day;

	@Option(names = "--json", description = "Print the answer for programs.")
	private boolean json;

	@Spec
	private CommandSpec spec;

	@Override
	public Integer call() {
		LocalDate today = Optional.ofNullable(day).orElseGet(LocalDate::now);
		if (Files.isDirectory(place)) {
			FolderPlans plans = FolderPlans.in(place, spec.commandLine().getErr());
			print(NextSteps.of(plans.plans(), today));
			return plans.status();
		}
		LoadedShop shop = LoadedShop.around(place);
		print(NextSteps.of(shop.plan(), today));
		return ExitStatus.CLEAN;
	}

	private void print(NextSteps steps) {
		PrintWriter out = spec.commandLine().getOut();
		if (json) {
			Json.print(out, NextJson.of(steps));
		} else {
			TextTable.print(out, NextReport.of(steps));
			out.flush();
		}
	}
}
