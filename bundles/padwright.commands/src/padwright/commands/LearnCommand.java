package padwright.commands;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;

import padwright.language.files.SafeFile;
import padwright.workup.learn.LearnedFigure;
import padwright.workup.learn.LearnedStock;
import padwright.workup.learn.ShopLearning;
import padwright.workup.report.LearnReport;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Tells what a shop learns from all its plans. */
@Command(name = "learn", mixinStandardHelpOptions = true, exitCodeListHeading = "%nExit status:%n",
		exitCodeList = { "0:told", "1:a file cannot be read and was left out, or the plans tell nothing yet",
				"2:there is no plan to learn from, or the file cannot be written" },
		description = "Pools all plans of a folder: how finely hands feel, how open pads are when first felt, stiffness, how many "
				+ "of those left level open, how long pads live by article and saliva, how many a player tears in a year; each "
				+ "with its interval and its evidence, or why it cannot be told. With --write a stock of it is written.")
final class LearnCommand implements Callable<Integer> {

	@Parameters(paramLabel = "FOLDER", description = "A folder of .plan files, with all folders below.")
	private Path folder;

	@Option(names = "--write", paramLabel = "FILE", description = "Write the figures into a .stock file.")
	private Path file;

	@Option(names = "--on", paramLabel = "DATE", converter = Day.class,
			description = "The day that the file names, as in 2026-03-02 (default: today).")
	private LocalDate day;

	@Option(names = "--json", description = "Print the answer for programs.")
	private boolean json;

	@Spec
	private CommandSpec spec;

	@Override
	public Integer call() {
		FolderFacts facts = FolderFacts.in(folder, spec.commandLine().getErr());
		ShopLearning learning = ShopLearning.ofFacts(facts.facts());
		PrintWriter out = spec.commandLine().getOut();
		if (json) {
			Json.print(out, json(learning));
		} else {
			TextTable.print(out, LearnReport.of(learning));
			out.flush();
		}
		if (file != null && learning.isTold()) {
			write(LearnedStock.text(learning, Optional.ofNullable(day).orElseGet(LocalDate::now)));
		}
		return learning.isTold() ? facts.status() : ExitStatus.FINDINGS;
	}

	private void write(String stock) {
		if (!file.getFileName().toString().endsWith(".stock")) {
			throw new InputException(file, "is no name for a stock; end it with .stock");
		}
		try {
			byte[] content = stock.getBytes(StandardCharsets.UTF_8);
			if (Files.exists(file)) {
				SafeFile.replace(file, content);
			} else {
				SafeFile.write(file, content);
			}
		} catch (IOException unwritten) {
			throw new InputException(file, "cannot be written: " + Reasons.of(unwritten));
		}
	}

	private static Map<String, Object> json(ShopLearning learning) {
		Map<String, Object> json = new LinkedHashMap<>();
		json.put("plans", learning.plans());
		json.put("figures", learning.figures().stream().map(LearnCommand::figure).toList());
		return json;
	}

	private static Map<String, Object> figure(LearnedFigure figure) {
		Map<String, Object> json = new LinkedHashMap<>();
		json.put("topic", figure.topic().name().toLowerCase(Locale.ROOT).replace('_', '-'));
		json.put("of", figure.of().words());
		figure.figure().ifPresent(learned -> {
			json.put("low", learned.low());
			json.put("middle", learned.middle());
			json.put("high", learned.high());
		});
		json.put("evidence", figure.evidence().words());
		return json;
	}
}
