package padwright.commands;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import picocli.CommandLine.Option;
import picocli.CommandLine.ScopeType;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.IVersionProvider;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** The command that all others are commands of. */
@Command(name = "padwright", mixinStandardHelpOptions = true, versionProvider = Padwright.Version.class,
		description = "Plans the pads, shims and regulation of flutes.",
		footer = "%nExit status 70: a fault of the program, not of the files; the message names a record to send.%n"
				+ "%npadwright open [SHOP or FILE]... opens the workbench.")
final class Padwright implements Runnable {

	static final class Version implements IVersionProvider {

		@Override
		public String[] getVersion() {
			return new String[] { ProductVersion.told() };
		}
	}

	private static final List<Class<?>> COMMANDS = List.of(CheckCommand.class, SolveCommand.class, CardCommand.class,
			FilmCommand.class, FormatCommand.class, RegulateCommand.class, LeakCommand.class, DriftCommand.class,
			DiagnoseCommand.class, ForecastCommand.class, StockCommand.class, QuoteCommand.class, NextCommand.class,
			MoneyCommand.class, SearchCommand.class, EstimateCommand.class, InvoiceCommand.class, LearnCommand.class, SheetCommand.class,
			NotesCommand.class, SoundCommand.class, ChooseCommand.class, CompareCommand.class, HandbackCommand.class,
			HistoryCommand.class, ReportCommand.class, PaperCommand.class, ExportCommand.class, ImportCommand.class,
			MergeCommand.class, ServeCommand.class, PrepareCommand.class, CompletionCommand.class);

	private static final String UNIT = "--unit";

	@Spec
	private CommandSpec spec;

	@Option(names = "--language", paramLabel = "LANGUAGE", scope = ScopeType.INHERIT,
			description = "Language of papers, reports and findings: en or de (default: English; papers in that of the machine).")
	private String language;

	@Option(names = UNIT, paramLabel = "UNIT",
			description = "Unit of shims and gaps in papers, reports and findings: thou, mm or um (default: thou). "
					+ "Diameters are in mm, and what is made for programs keeps its own.")
	private String unit;

	/**
	 * What parses these arguments. Where the first names a command or asks for the version, other commands are left out:
	 * to look at all of them takes longer than all else that a short command does.
	 */
	static CommandLine commandLine(String... arguments) {
		CommandLine line = new CommandLine(new Padwright());
		String first = arguments.length == 0 ? "" : arguments[0];
		if (!first.equals("--version")) {
			Map<String, Class<?>> commands = byName();
			(commands.containsKey(first) ? List.<Class<?>>of(commands.get(first)) : COMMANDS).forEach(line::addSubcommand);
			line.getSubcommands().values().forEach(command -> shareUnit(line.getCommandSpec(), command.getCommandSpec()));
		}
		return line;
	}

	/** All but those that ask for a unit of their own by that name, which an option in all of them would not allow. */
	private static void shareUnit(CommandSpec program, CommandSpec command) {
		if (command.findOption(UNIT) == null) {
			command.addOption(OptionSpec.builder(program.findOption(UNIT)).inherited(true).build());
		}
	}

	private static Map<String, Class<?>> byName() {
		Map<String, Class<?>> commands = new LinkedHashMap<>();
		COMMANDS.forEach(command -> commands.put(command.getAnnotation(Command.class).name(), command));
		return commands;
	}

	/** As it was asked for. */
	Optional<String> language() {
		return Optional.ofNullable(language);
	}

	/** As it was asked for. */
	Optional<String> unit() {
		return Optional.ofNullable(unit);
	}

	@Override
	public void run() {
		throw new ParameterException(spec.commandLine(), "name a command");
	}
}
