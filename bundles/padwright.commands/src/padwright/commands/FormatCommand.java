package padwright.commands;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;

import padwright.language.files.SafeFile;
import padwright.language.formatting2.DocumentFormatter;
import padwright.language.shop.ShopFinding;
import padwright.workup.checks.IssueCodes;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Lays documents out. */
@Command(name = "format", mixinStandardHelpOptions = true, exitCodeListHeading = "%nExit status:%n",
		exitCodeList = { "0:every document is laid out", "1:one has text that cannot be read, and was left alone",
				"2:a file cannot be used at all" },
		description = "Lays documents out in the common way; comments stay. The old text is kept beside each file.")
final class FormatCommand implements Callable<Integer> {

	@Parameters(arity = "1..*", paramLabel = "FILE|FOLDER", description = "Documents, or folders of them.")
	private List<Path> paths;

	@Spec
	private CommandSpec spec;

	@Override
	public Integer call() {
		int status = ExitStatus.CLEAN;
		for (LoadedShop shop : LoadedShop.around(paths)) {
			for (Path file : shop.chosen()) {
				status = Math.max(status, format(shop, file));
			}
		}
		return status;
	}

	private int format(LoadedShop shop, Path file) {
		if (shop.shop().whyUnreadable(file).isPresent()) {
			FindingLines.print(spec.commandLine().getErr(), shop.shop().findings(file));
			return ExitStatus.UNUSABLE;
		}
		List<ShopFinding> syntax = shop.shop().findings(file).stream()
				.filter(finding -> finding.code().equals(IssueCodes.SYNTAX)).toList();
		if (!syntax.isEmpty()) {
			FindingLines.print(spec.commandLine().getErr(), syntax);
			spec.commandLine().getErr().println(ShownPath.of(file) + " was left as it is");
			return ExitStatus.FINDINGS;
		}
		write(file, shop.shop().text(file),
				Language.services().getInstance(DocumentFormatter.class).format(shop.shop().resource(file)));
		return ExitStatus.CLEAN;
	}

	private void write(Path file, String old, String laidOut) {
		if (old.equals(laidOut)) {
			return;
		}
		try {
			SafeFile.replace(file, old.getBytes(StandardCharsets.UTF_8), laidOut.getBytes(StandardCharsets.UTF_8));
			spec.commandLine().getOut().println(ShownPath.of(file));
		} catch (IOException failed) {
			throw new InputException(file, "was not laid out: " + Reasons.of(failed));
		}
	}
}
