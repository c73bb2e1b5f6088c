package padwright.commands;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;

import padwright.language.shop.ShopFinding;
import padwright.workup.checks.IssueCodes;
import padwright.workup.checks.Severity;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Lists what is wrong in files. */
@Command(name = "check", mixinStandardHelpOptions = true, exitCodeListHeading = "%nExit status:%n",
		exitCodeList = { "0:nothing of error level", "1:findings of error level", "2:a file cannot be used at all",
				"130:ended from the keyboard" },
		description = "Checks documents and lists the findings: file:line:column severity code message.")
final class CheckCommand implements Callable<Integer> {

	@Parameters(arity = "0..*", paramLabel = "FILE|FOLDER", description = "Documents, or folders of them.")
	private List<Path> paths = List.of();

	@Option(names = "--staged", description = "Check what is staged in git instead: as a pre-commit hook, "
			+ "exec padwright check --staged")
	private boolean staged;

	@Option(names = "--afresh", description = "Check all files, those too that were checked before and have not changed.")
	private boolean afresh;

	@Option(names = "--json", description = "Print the findings for programs.")
	private boolean json;

	@Spec
	private CommandSpec spec;

	@Override
	public Integer call() {
		if (paths.isEmpty() != staged) {
			throw new ParameterException(spec.commandLine(), "name files or folders, or --staged");
		}
		StagedFiles given = staged ? StagedFiles.around(Path.of("")) : new StagedFiles(paths, Map.of());
		List<ChosenFiles> shops = ChosenFiles.in(given.chosen(), given.texts());
		int files = shops.stream().mapToInt(shop -> shop.chosen().size()).sum();
		if (files == 0 && !staged) {
			throw new InputException("there is no .keys, .stock or .plan file in what was named");
		}
		Optional<List<ShopFinding>> findings = findings(shops, given.texts(), files);
		findings.ifPresent(all -> print(files, all));
		return findings.map(CheckCommand::status).orElse(ExitStatus.STOPPED);
	}

	private void print(int files, List<ShopFinding> findings) {
		if (json) {
			Json.print(spec.commandLine().getOut(), json(files, findings));
		} else {
			FindingLines.print(spec.commandLine().getOut(), findings);
			summary(files, findings);
		}
	}

	/** Nothing where the check was ended before its end: half of the findings would look like all. */
	private Optional<List<ShopFinding>> findings(List<ChosenFiles> shops, Map<Path, String> texts, int files) {
		try (CheckRun run = new CheckRun(new Progress(spec.commandLine().getErr(), "checking", files))) {
			List<ShopFinding> all = shops.stream().flatMap(shop -> run.findings(shop, texts, afresh).stream()).toList();
			return run.isStopped() ? Optional.empty() : Optional.of(all);
		}
	}

	private void summary(int files, List<ShopFinding> findings) {
		PrintWriter err = spec.commandLine().getErr();
		err.println(files + (files == 1 ? " file, " : " files, ") + FindingLines.count(findings, Severity.ERROR)
				+ " errors, " + FindingLines.count(findings, Severity.WARNING) + " warnings, "
				+ FindingLines.count(findings, Severity.INFO) + " remarks");
	}

	private static Map<String, Object> json(int files, List<ShopFinding> findings) {
		Map<String, Object> json = new LinkedHashMap<>();
		json.put("files", files);
		json.put("errors", FindingLines.count(findings, Severity.ERROR));
		json.put("warnings", FindingLines.count(findings, Severity.WARNING));
		json.put("remarks", FindingLines.count(findings, Severity.INFO));
		json.put("findings", findings.stream().map(FindingLines::json).toList());
		return json;
	}

	private static int status(List<ShopFinding> findings) {
		if (findings.stream().map(ShopFinding::code).anyMatch(IssueCodes.UNREADABLE::equals)) {
			return ExitStatus.UNUSABLE;
		}
		return FindingLines.count(findings, Severity.ERROR) > 0 ? ExitStatus.FINDINGS : ExitStatus.CLEAN;
	}
}
