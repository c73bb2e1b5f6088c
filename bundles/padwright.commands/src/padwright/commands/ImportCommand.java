package padwright.commands;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;

import org.eclipse.xtext.conversion.IValueConverterService;

import padwright.engine.length.LengthUnit;
import padwright.exchange.AddedFormats;
import padwright.exchange.Exchange;
import padwright.exchange.Format;
import padwright.exchange.Imported;
import padwright.exchange.readings.KeyReadings;
import padwright.exchange.readings.ReadingsEdits;
import padwright.exchange.readings.ReadingsTable;
import padwright.exchange.tree.ExchangeException;
import padwright.language.edit.PlanFile;
import padwright.language.edit.TextEdit;
import padwright.language.files.SafeFile;
import padwright.language.files.SourceText;
import padwright.language.files.UnreadableException;
import picocli.CommandLine.Command;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;
import picocli.CommandLine.TypeConversionException;

/** Takes a document or readings over from another program. */
@Command(name = "import", mixinStandardHelpOptions = true, exitCodeListHeading = "%nExit status:%n",
		exitCodeList = { "0:it was taken over", "2:it cannot be taken over; nothing was written" },
		description = "Takes a document over that export or another program wrote, or with --into the readings of a digital "
				+ "indicator into the empty-cup gaps of a plan. Nothing is ever half written.")
final class ImportCommand implements Callable<Integer> {

	/** Reads a unit by its sign. */
	static final class Unit implements ITypeConverter<LengthUnit> {

		@Override
		public LengthUnit convert(String written) {
			return LengthUnit.bySymbol(written)
					.orElseThrow(() -> new TypeConversionException(
							"'" + written + "' is not one of " + String.join(", ", LengthUnit.symbols())));
		}
	}

	/** The signs of all units. */
	static final class Symbols extends ArrayList<String> {

		private static final long serialVersionUID = 1;

		Symbols() {
			super(LengthUnit.symbols());
		}
	}

	@Parameters(paramLabel = "FILE", description = "A .json, .csv or .xmi file; with --into a .csv file of readings.")
	private Path file;

	@Option(names = { "-o", "--output" }, paramLabel = "OUT",
			description = "File to write (default: as FILE is called, in the working directory).")
	private Path output;

	@Option(names = "--into", paramLabel = "PLAN", description = "Put readings into the rows of this .plan file.")
	private Path plan;

	@Option(names = "--from", paramLabel = "SOURCE",
			description = "Readings as the source of this name writes them, which an extension adds (default: a table).")
	private String source;

	@Option(names = "--unit", paramLabel = "UNIT", converter = Unit.class,
			completionCandidates = Symbols.class,
			description = "${COMPLETION-CANDIDATES}: the unit of readings that have none.")
	private LengthUnit unit;

	@Option(names = "--replace", description = "Replace a file, or gaps in the plan, that are there already.")
	private boolean replace;

	@Spec
	private CommandSpec spec;

	@Override
	public Integer call() {
		if (plan != null && output != null) {
			throw new ParameterException(spec.commandLine(), "readings go into the plan: leave --output out");
		}
		if (plan == null && source != null) {
			throw new ParameterException(spec.commandLine(), "name the plan that the readings go into: --into PLAN");
		}
		try {
			String content = SourceText.read(file);
			if (plan == null) {
				takeOver(content);
			} else {
				putReadings(content);
			}
			return ExitStatus.CLEAN;
		} catch (UnreadableException why) {
			throw new InputException(file, why.getMessage());
		} catch (ExchangeException refused) {
			String place = ShownPath.of(file) + (refused.line().isPresent() ? ":" + refused.line().getAsInt() : "");
			throw new InputException(place + " was not taken over: " + refused.getMessage());
		}
	}

	private void takeOver(String content) throws ExchangeException {
		Imported imported = imported(content);
		Path target = Optional.ofNullable(output).orElseGet(() -> target(imported));
		byte[] text = imported.text().getBytes(StandardCharsets.UTF_8);
		try {
			if (!Files.exists(target)) {
				SafeFile.write(target, text);
			} else if (replace) {
				SafeFile.replace(target, Files.readAllBytes(target), text);
			} else {
				throw new InputException(target, "is there already; say --replace, or another --output");
			}
		} catch (IOException failed) {
			throw new InputException(target, "was not written: " + Reasons.of(failed));
		}
		spec.commandLine().getOut().println(ShownPath.of(target));
	}

	private Imported imported(String content) throws ExchangeException {
		String name = FormatNames.ofFile(file).orElseThrow(
				() -> new InputException(file, "is none of ." + String.join(", .", new FormatNames())));
		Optional<Format> own = Format.byName(name);
		return own.isPresent() ? Language.services().getInstance(Exchange.class).read(content, own.get())
				: AddedFormats.installed().read(content, name);
	}

	private Path target(Imported imported) {
		String name = file.getFileName().toString();
		return Path.of(name.substring(0, name.lastIndexOf('.')) + "." + imported.extension());
	}

	private void putReadings(String content) throws ExchangeException {
		LoadedShop shop = LoadedShop.around(plan);
		List<TextEdit> edits = ReadingsEdits.of(shop.plan(), readings(content),
				Language.services().getInstance(IValueConverterService.class), replace);
		try {
			PlanFile.Written written = PlanFile.write(Language.services(), shop.shop(), shop.file(), edits);
			spec.commandLine().getOut().println(written.changes() == 0 ? "the plan holds these gaps already"
					: ShownPath.of(shop.file()) + "; the old text is in " + ShownPath.of(written.backup().orElseThrow()));
		} catch (IOException failed) {
			throw new InputException(plan, "was not written: " + Reasons.of(failed));
		}
	}

	private List<KeyReadings> readings(String content) throws ExchangeException {
		if (source == null) {
			return ReadingsTable.read(content, Optional.ofNullable(unit));
		}
		AddedFormats added = AddedFormats.installed();
		if (!added.readings().contains(source)) {
			throw new ParameterException(spec.commandLine(), added.readings().isEmpty()
					? "no extension adds a source of readings"
					: "'" + source + "' is not one of " + String.join(", ", added.readings()));
		}
		return added.readings(content, source, Optional.ofNullable(unit));
	}
}
