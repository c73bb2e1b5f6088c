package padwright.commands;

import java.io.PrintWriter;
import java.util.concurrent.Callable;

import padwright.model.systems.EffectiveSystem;
import padwright.workup.mechanism.SystemMechanism;
import padwright.workup.report.NotesReport;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Tells what the fingerings of a key system do. */
@Command(name = "notes", mixinStandardHelpOptions = true, exitCodeListHeading = "%nExit status:%n",
		exitCodeList = { "0:the notes were listed", "1:they were listed, but the file has errors",
				"2:the system cannot be used at all" },
		description = "Lists for every fingering of a key system its touches, the keys they move, the holes that stay "
				+ "open from the head down, and what is contradictory; then what each touch does alone.")
final class NotesCommand implements Callable<Integer> {

	@Parameters(paramLabel = "SYSTEM", description = ChosenSystem.DESCRIPTION)
	private String system;

	@Option(names = "--json", description = "Print the notes for programs.")
	private boolean json;

	@Spec
	private CommandSpec spec;

	@Override
	public Integer call() {
		ChosenSystem chosen = ChosenSystem.of(system);
		FindingLines.print(spec.commandLine().getErr(), chosen.errors());
		SystemMechanism mechanism = SystemMechanism.of(EffectiveSystem.of(chosen.system()));
		PrintWriter out = spec.commandLine().getOut();
		if (json) {
			Json.print(out, NotesJson.of(chosen.system().getName(), mechanism));
		} else {
			TextTable.print(out, NotesReport.of(chosen.system().getName(), mechanism));
		}
		return chosen.errors().isEmpty() ? ExitStatus.CLEAN : ExitStatus.FINDINGS;
	}
}
