package padwright.commands;

import picocli.AutoComplete;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** Prints what a shell needs to complete commands and options. */
@Command(name = "completion", mixinStandardHelpOptions = true,
		description = "Prints what bash and zsh need to complete commands and options: "
				+ "source <(padwright completion)")
final class CompletionCommand implements Runnable {

	@Spec
	private CommandSpec spec;

	@Override
	public void run() {
		spec.commandLine().getOut().print(AutoComplete.bash("padwright", Padwright.commandLine()));
		spec.commandLine().getOut().flush();
	}
}
