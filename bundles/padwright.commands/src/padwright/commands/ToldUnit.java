package padwright.commands;

import java.util.Optional;

import padwright.engine.length.LengthUnit;
import padwright.workup.words.ShownUnit;
import picocli.CommandLine;
import picocli.CommandLine.IExecutionStrategy;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ParseResult;

/** Lets a command tell lengths in the unit that it was asked for. What is made for programs keeps its own. */
final class ToldUnit implements IExecutionStrategy {

	private final IExecutionStrategy run;

	/** @param run what runs the command then */
	ToldUnit(IExecutionStrategy run) {
		this.run = run;
	}

	@Override
	public int execute(ParseResult parsed) {
		LengthUnit before = ShownUnit.now();
		wanted(parsed.commandSpec().root().commandLine()).ifPresent(ShownUnit::choose);
		try {
			return run.execute(parsed);
		} finally {
			ShownUnit.choose(before);
		}
	}

	private static Optional<LengthUnit> wanted(CommandLine root) {
		return root.getCommand() instanceof Padwright program ? program.unit().map(symbol -> LengthUnit.bySymbol(symbol)
				.orElseThrow(() -> unknown(symbol, root))) : Optional.empty();
	}

	private static ParameterException unknown(String symbol, CommandLine root) {
		return new ParameterException(root, "--unit " + symbol + " is no unit of length; write one of "
				+ String.join(", ", LengthUnit.symbols()));
	}
}
