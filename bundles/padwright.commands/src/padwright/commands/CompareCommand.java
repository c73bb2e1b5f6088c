package padwright.commands;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;

import padwright.workup.compare.PlanComparison;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Tells what differs between two services of one instrument. */
@Command(name = "compare", mixinStandardHelpOptions = true, exitCodeListHeading = "%nExit status:%n",
		exitCodeList = { "0:the plans were compared, whether or not they differ", "2:a plan cannot be used at all" },
		description = "Tells key by key what differs between two plans of one instrument, in a table; lengths in "
				+ "thou. Answers that a plan does not note yet are solved.")
final class CompareCommand implements Callable<Integer> {

	@Parameters(index = "0", paramLabel = "OLD", description = "The .plan file of the earlier service.")
	private Path old;

	@Parameters(index = "1", paramLabel = "NEW", description = "The .plan file of the later service.")
	private Path current;

	@Parameters(index = "2..*", hidden = true)
	private List<String> more = List.of();

	@Option(names = "--git", description = "Take the seven arguments that git gives a diff driver, and find the system "
			+ "and stock in the working tree. For git: git config diff.padwright.command 'padwright compare --git', "
			+ "and in .gitattributes: *.plan diff=padwright")
	private boolean git;

	@Option(names = "--json", description = "Print the comparison for programs.")
	private boolean json;

	@Spec
	private CommandSpec spec;

	@Override
	public Integer call() {
		if (git) {
			return GitVersions.of(old, current, more).print(spec.commandLine().getOut());
		}
		if (!more.isEmpty()) {
			throw new InputException("name two plans");
		}
		PrintWriter err = spec.commandLine().getErr();
		PlanComparison comparison =
				PlanComparison.of(SolvedPlan.in(old, err).solution(), SolvedPlan.in(current, err).solution());
		PrintWriter out = spec.commandLine().getOut();
		if (json) {
			Json.print(out, ComparisonText.json(comparison));
		} else {
			ComparisonText.print(out, comparison);
		}
		return ExitStatus.CLEAN;
	}
}
