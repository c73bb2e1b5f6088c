package padwright.commands;

import java.io.IOException;
import java.util.concurrent.Callable;

import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** Makes what lets later commands start sooner. */
@Command(name = "prepare", mixinStandardHelpOptions = true, exitCodeListHeading = "%nExit status:%n",
		exitCodeList = { "0:done", "2:there is no place for it, or this Java cannot" },
		description = "Lets later commands start sooner: keeps in a file what Java needs to know of the program. The first "
				+ "command does so by itself, in the background; installers and images of machines call this instead.")
final class PrepareCommand implements Callable<Integer> {

	@Spec
	private CommandSpec spec;

	@Override
	public Integer call() throws IOException {
		ClassArchive archive = ClassArchive.ofThisProgram().orElseThrow(() -> new InputException(
				"there is no folder to keep it in; set XDG_CACHE_HOME to a folder that you own"));
		if (!archive.make()) {
			throw new InputException("this Java cannot keep classes in a file; commands start without");
		}
		spec.commandLine().getErr().println("kept in " + archive.file());
		return ExitStatus.CLEAN;
	}
}
