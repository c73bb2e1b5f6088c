package padwright.commands;

import java.io.IOException;
import java.io.InputStream;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;

import padwright.exchange.AddedFormats;
import padwright.exchange.Exchange;
import padwright.exchange.Format;
import padwright.exchange.json.JsonExchange;
import padwright.exchange.tree.ExchangeException;
import padwright.language.files.SafeFile;
import padwright.language.shop.ShopFinding;
import padwright.model.plan.Document;
import padwright.workup.checks.IssueCodes;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** Writes a document for other programs. */
@Command(name = "export", mixinStandardHelpOptions = true, exitCodeListHeading = "%nExit status:%n",
		exitCodeList = { "0:the document was written", "1:it has text that cannot be read, and was not written",
				"2:the file cannot be used at all" },
		description = "Writes a document for other programs: as JSON, as a table for spreadsheets, or as XMI with all that "
				+ "it draws on. import reads them back.")
final class ExportCommand implements Callable<Integer> {

	@Parameters(arity = "0..1", paramLabel = "FILE", description = "A .keys, .stock or .plan file.")
	private Path file;

	@Option(names = "--to", paramLabel = "FORMAT", completionCandidates = FormatNames.class,
			description = "${COMPLETION-CANDIDATES} (default: as the output is called, else json).")
	private String format;

	@Option(names = { "-o", "--output" }, paramLabel = "OUT", description = "File to write (default: to the console).")
	private Path output;

	@Option(names = "--schema", description = "Print the JSON schema of what is written, and nothing else.")
	private boolean schema;

	@Spec
	private CommandSpec spec;

	@Override
	public Integer call() throws IOException {
		if (schema) {
			return print(schemaText());
		}
		if (file == null) {
			throw new ParameterException(spec.commandLine(), "name a .keys, .stock or .plan file");
		}
		LoadedShop shop = LoadedShop.around(file);
		if (shop.chosen().size() != 1) {
			throw new InputException("name one file; there are " + shop.chosen().size() + " here");
		}
		shop.shop().whyUnreadable(shop.file()).ifPresent(why -> {
			throw new InputException(file, why);
		});
		List<ShopFinding> syntax = shop.shop().findings(shop.file()).stream()
				.filter(finding -> finding.code().equals(IssueCodes.SYNTAX)).toList();
		if (!syntax.isEmpty()) {
			FindingLines.print(spec.commandLine().getErr(), syntax);
			return ExitStatus.FINDINGS;
		}
		return print(content(shop));
	}

	private static String schemaText() throws IOException {
		try (InputStream text = JsonExchange.class.getResourceAsStream(JsonExchange.SCHEMA)) {
			return new String(text.readAllBytes(), StandardCharsets.UTF_8);
		}
	}

	private String content(LoadedShop shop) {
		try {
			Document document = shop.shop().document(shop.file()).orElseThrow(() -> new InputException(file, "is empty"));
			String name = formatName();
			Optional<Format> own = Format.byName(name);
			return own.isPresent() ? Language.services().getInstance(Exchange.class).write(document, own.get())
					: AddedFormats.installed().write(document, name);
		} catch (ExchangeException refused) {
			throw new InputException(file, "was not written: " + refused.getMessage());
		}
	}

	private String formatName() {
		if (format == null) {
			return Optional.ofNullable(output).flatMap(FormatNames::ofFile).orElse(Format.JSON.extension());
		}
		return FormatNames.known(format).orElseThrow(() -> new ParameterException(spec.commandLine(),
				"'" + format + "' is not one of " + String.join(", ", new FormatNames())));
	}

	private int print(String content) {
		PrintWriter out = spec.commandLine().getOut();
		if (output == null) {
			out.print(content);
			out.flush();
			return ExitStatus.CLEAN;
		}
		try {
			SafeFile.write(output, content.getBytes(StandardCharsets.UTF_8));
		} catch (IOException failed) {
			throw new InputException(output, "was not written: " + Reasons.of(failed));
		}
		out.println(ShownPath.of(output));
		return ExitStatus.CLEAN;
	}
}
