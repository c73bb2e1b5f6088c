package padwright.commands;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;

import padwright.language.shop.ShopFinding;
import padwright.workup.checks.IssueCodes;
import padwright.workup.checks.Severity;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Lists what is wrong in files. */
@Command(name = "check", mixinStandardHelpOptions = true, exitCodeListHeading = "%nExit status:%n",
		exitCodeList = { "0:nothing of error level", "1:findings of error level", "2:a file cannot be used at all" },
		description = "Checks documents and lists the findings: file:line:column severity code message.")
final class CheckCommand implements Callable<Integer> {

	@Parameters(arity = "1..*", paramLabel = "FILE|FOLDER", description = "Documents, or folders of them.")
	private List<Path> paths;

	@Option(names = "--json", description = "Print the findings for programs.")
	private boolean json;

	@Spec
	private CommandSpec spec;

	@Override
	public Integer call() {
		List<LoadedShop> shops = LoadedShop.around(paths);
		int files = shops.stream().mapToInt(shop -> shop.chosen().size()).sum();
		if (files == 0) {
			throw new InputException("there is no .keys, .stock or .plan file in what was named");
		}
		List<ShopFinding> findings = findings(shops, files);
		if (json) {
			Json.print(spec.commandLine().getOut(), json(files, findings));
		} else {
			FindingLines.print(spec.commandLine().getOut(), findings);
			summary(files, findings);
		}
		return status(findings);
	}

	private List<ShopFinding> findings(List<LoadedShop> shops, int files) {
		Progress progress = new Progress(spec.commandLine().getErr(), "checking", files);
		List<ShopFinding> findings = new ArrayList<>();
		for (LoadedShop shop : shops) {
			for (Path file : shop.chosen()) {
				progress.next(ShownPath.of(file));
				findings.addAll(shop.shop().findings(file));
			}
		}
		progress.end();
		return findings;
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
