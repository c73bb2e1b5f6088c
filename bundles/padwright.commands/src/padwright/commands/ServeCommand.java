package padwright.commands;

import java.io.PrintStream;
import java.util.concurrent.Callable;

import padwright.language.ide.server.StdioServer;
import picocli.CommandLine.Command;

/** Serves the language to an editor. */
@Command(name = "serve", mixinStandardHelpOptions = true, exitCodeListHeading = "%nExit status:%n",
		exitCodeList = { "0:the editor shut the server down", "1:the editor went without saying so" },
		description = "Serves an editor over standard input and output by the Language Server Protocol. The editor "
				+ "starts this command by itself; the user guide says how.")
final class ServeCommand implements Callable<Integer> {

	/** The protocol alone may write to the output; what anybody else prints goes to the messages. */
	@Override
	public Integer call() {
		PrintStream protocol = System.out;
		System.setOut(System.err);
		try {
			return StdioServer.serve(System.in, protocol) ? ExitStatus.CLEAN : ExitStatus.FINDINGS;
		} finally {
			System.setOut(protocol);
		}
	}
}
