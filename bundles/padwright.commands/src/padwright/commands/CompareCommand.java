package padwright.commands;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;

import padwright.workup.compare.PlanComparison;
import padwright.workup.compare.SystemComparison;
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

	private static final String SYSTEMS = ".keys";

	@Parameters(index = "0", paramLabel = "OLD", description = "The .plan file of the earlier service, or "
			+ ChosenSystem.DESCRIPTION)
	private Path old;

	@Parameters(index = "1", paramLabel = "NEW", description = "The .plan file of the later service, or the other "
			+ "key system.")
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
			throw new InputException("name two plans, or two key systems");
		}
		if (isSystem(old) && isSystem(current)) {
			return compareSystems();
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

	private static boolean isSystem(Path named) {
		return named.toString().split("#", 2)[0].endsWith(SYSTEMS);
	}

	private int compareSystems() {
		ChosenSystem then = ChosenSystem.of(old.toString());
		ChosenSystem now = ChosenSystem.of(current.toString());
		FindingLines.print(spec.commandLine().getErr(), then.errors());
		FindingLines.print(spec.commandLine().getErr(), now.errors());
		SystemComparison comparison = SystemComparison.of(then.system(), now.system());
		PrintWriter out = spec.commandLine().getOut();
		if (json) {
			Json.print(out, ComparisonText.json(comparison));
		} else {
			ComparisonText.print(out, comparison);
		}
		return ExitStatus.CLEAN;
	}
}
