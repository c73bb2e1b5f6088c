package padwright.commands;

import org.osgi.framework.FrameworkUtil;
import org.osgi.framework.Version;

import picocli.CommandLine.Command;
import picocli.CommandLine.IVersionProvider;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** The command that all others are commands of. */
@Command(name = "padwright", mixinStandardHelpOptions = true, versionProvider = Padwright.BundleVersion.class,
		description = "Plans the pads, shims and regulation of flutes.",
		footer = "%nExit status 70: a fault of the program, not of the files; the message names a record to send.%n"
				+ "%npadwright open [SHOP or FILE]... opens the workbench.",
		subcommands = { CheckCommand.class, SolveCommand.class, CardCommand.class, FilmCommand.class,
				FormatCommand.class, RegulateCommand.class, LeakCommand.class, DriftCommand.class,
				DiagnoseCommand.class, ForecastCommand.class, StockCommand.class, QuoteCommand.class,
				NextCommand.class, MoneyCommand.class, LearnCommand.class,
				SheetCommand.class, NotesCommand.class, SoundCommand.class, ChooseCommand.class,
				CompareCommand.class,
				HandbackCommand.class, HistoryCommand.class, ExportCommand.class, ImportCommand.class, MergeCommand.class,
				ServeCommand.class })
final class Padwright implements Runnable {

	static final class BundleVersion implements IVersionProvider {

		@Override
		public String[] getVersion() {
			Version version = FrameworkUtil.getBundle(Padwright.class).getVersion();
			return new String[] { "padwright %d.%d.%d (%s)".formatted(version.getMajor(), version.getMinor(),
					version.getMicro(), version.getQualifier()) };
		}
	}

	@Spec
	private CommandSpec spec;

	@Override
	public void run() {
		throw new ParameterException(spec.commandLine(), "name a command");
	}
}
