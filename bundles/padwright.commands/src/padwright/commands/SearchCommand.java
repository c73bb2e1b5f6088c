package padwright.commands;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;

import padwright.language.edit.WrittenText;
import padwright.workup.job.PlanLines;
import padwright.workup.report.Report;
import padwright.workup.report.ReportTable;
import padwright.workup.report.SearchReport;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Searches the plans of a folder. */
@Command(name = "search", mixinStandardHelpOptions = true, exitCodeListHeading = "%nExit status:%n",
		exitCodeList = { "0:told", "1:a file cannot be read and was left out", "2:there is no plan to search" },
		description = "Searches all plans of a folder for words: in names, instruments, serial numbers, players, days, in how "
				+ "pads were found and in the lines of the diary: complaints, stages, clamped pads, remarks of the shop, invoices; "
				+ "as they are written, and in the words of --language. A plan has to say them all, in any order.")
final class SearchCommand implements Callable<Integer> {

	private static final List<String> MEMBERS = List.of("plan", "instrument", "serial", "player", "date", "found");

	@Parameters(index = "0", paramLabel = "FOLDER", description = "A folder of .plan files, with all folders below.")
	private Path folder;

	@Parameters(index = "1..*", arity = "1..*", paramLabel = "WORD", description = "What to look for.")
	private List<String> words;

	@Option(names = "--json", description = "Print the answer for programs.")
	private boolean json;

	@Spec
	private CommandSpec spec;

	@Override
	public Integer call() {
		FolderPlans plans = FolderPlans.in(folder, spec.commandLine().getErr());
		Report report = SearchReport.of(plans.plans().stream()
				.map(plan -> new SearchReport.Searched(plan.plan(), PlanLines.of(plan, WrittenText::of))).toList(), String.join(" ", words));
		PrintWriter out = spec.commandLine().getOut();
		if (json) {
			Json.print(out, Map.of("found", report.tables().get(0).rows().stream().map(SearchCommand::row).toList()));
		} else {
			TextTable.print(out, report);
			out.flush();
		}
		return plans.status();
	}

	private static Map<String, Object> row(ReportTable.Row row) {
		Map<String, Object> json = new LinkedHashMap<>();
		for (int cell = 0; cell < MEMBERS.size(); cell++) {
			json.put(MEMBERS.get(cell), row.cells().get(cell));
		}
		return json;
	}
}
