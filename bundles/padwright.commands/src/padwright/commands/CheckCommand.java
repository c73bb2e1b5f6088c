package padwright.commands;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;

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

	@Option(names = "--staged", description = "Check what is staged in git instead, and what it breaks in "
			+ "other files of the shop: as a pre-commit hook, exec padwright check --staged")
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
		Optional<CheckOutcome> outcome = staged
				? StagedCheck.of(StagedFiles.around(Path.of("")), afresh, spec.commandLine().getErr()) : check();
		outcome.ifPresent(this::print);
		return outcome.map(CheckOutcome::all).map(CheckCommand::status).orElse(ExitStatus.STOPPED);
	}

	private void print(CheckOutcome outcome) {
		if (json) {
			Json.print(spec.commandLine().getOut(), json(outcome));
		} else {
			FindingLines.print(spec.commandLine().getOut(), outcome.all());
			summary(outcome);
		}
	}

	/** Nothing where the check was ended before its end: half of the findings would look like all. */
	private Optional<CheckOutcome> check() {
		List<ChosenFiles> shops = ChosenFiles.in(paths, Map.of());
		int files = shops.stream().mapToInt(shop -> shop.chosen().size()).sum();
		if (files == 0) {
			throw new InputException("there is no .keys, .stock or .plan file in what was named");
		}
		try (CheckRun run = new CheckRun(new Progress(spec.commandLine().getErr(), "checking", files))) {
			List<ShopFinding> all =
					shops.stream().flatMap(shop -> run.findings(shop, Map.of(), afresh).stream()).toList();
			return run.isStopped() ? Optional.empty() : Optional.of(new CheckOutcome(files, all, 0, List.of()));
		}
	}

	private void summary(CheckOutcome outcome) {
		PrintWriter err = spec.commandLine().getErr();
		List<ShopFinding> findings = outcome.all();
		err.println(String.join(", ", counted(outcome.files(), "file"),
				counted(FindingLines.count(findings, Severity.ERROR), "error"),
				counted(FindingLines.count(findings, Severity.WARNING), "warning"),
				counted(FindingLines.count(findings, Severity.INFO), "remark")));
		if (outcome.others() > 0) {
			String others = outcome.others() + (outcome.others() == 1 ? " file that is" : " files that are");
			err.println("also checked " + others + " not staged, as they would stand with what is: "
					+ (outcome.broken().isEmpty() ? "nothing new is wrong in them" : broken(outcome.broken())));
		}
	}

	private static String counted(long count, String what) {
		return count + " " + what + (count == 1 ? "" : "s");
	}

	private static String broken(List<ShopFinding> findings) {
		return "what is staged breaks " + findings.stream().map(finding -> ShownPath.of(finding.file())).distinct()
				.collect(Collectors.joining(", "));
	}

	private static Map<String, Object> json(CheckOutcome outcome) {
		List<ShopFinding> findings = outcome.all();
		Map<String, Object> json = new LinkedHashMap<>();
		json.put("files", outcome.files());
		json.put("alsoChecked", outcome.others());
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
