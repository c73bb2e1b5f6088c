package padwright.commands;

import java.util.Locale;
import java.util.Optional;
import java.util.function.IntSupplier;

import picocli.CommandLine;
import picocli.CommandLine.IExecutionStrategy;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ParseResult;

/** Lets a command speak the language that it was asked for. */
final class SpokenLanguage implements IExecutionStrategy {

	private static final Locale.Category SPOKEN = Locale.Category.DISPLAY;

	private final IExecutionStrategy run;

	/** @param run what runs the command then */
	SpokenLanguage(IExecutionStrategy run) {
		this.run = run;
	}

	@Override
	public int execute(ParseResult parsed) {
		return wanted(parsed).map(language -> in(language, () -> run.execute(parsed)))
				.orElseGet(() -> run.execute(parsed));
	}

	/** Nothing where the program goes on to speak what it speaks. */
	private static Optional<Locale> wanted(ParseResult parsed) {
		CommandLine root = parsed.commandSpec().root().commandLine();
		Optional<String> asked = root.getCommand() instanceof Padwright program ? program.language() : Optional.empty();
		if (asked.isPresent()) {
			return asked.map(tag -> language(tag, root));
		}
		ParseResult last = parsed;
		while (last.hasSubcommand()) {
			last = last.subcommand();
		}
		return last.commandSpec().userObject() instanceof DrawsPaper command && command.draws()
				? Optional.of(Locale.getDefault()) : Optional.empty();
	}

	private static Locale language(String tag, CommandLine root) {
		Locale language = Locale.forLanguageTag(tag.replace('_', '-'));
		if (language.getLanguage().isEmpty()) {
			throw new ParameterException(root, "--language " + tag + " is no language; write en or de");
		}
		return language;
	}

	private static int in(Locale language, IntSupplier work) {
		Locale before = Locale.getDefault(SPOKEN);
		Locale.setDefault(SPOKEN, language);
		try {
			return work.getAsInt();
		} finally {
			Locale.setDefault(SPOKEN, before);
		}
	}
}
