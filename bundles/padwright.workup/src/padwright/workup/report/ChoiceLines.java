package padwright.workup.report;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import padwright.workup.choose.Candidate;
import padwright.workup.choose.KeyChoice;
import padwright.workup.choose.PadChoice;
import padwright.workup.choose.SetChoice;
import padwright.workup.inspection.Recommendation;
import padwright.workup.parts.Labels;
import padwright.workup.words.Messages;

/** Which pads suit an instrument, for a terminal: what is said of many keys is said once, in lines instead of wide cells. */
public final class ChoiceLines {

	private static final String BETWEEN = ", ";

	private final PadChoice choice;

	private ChoiceLines(PadChoice choice) {
		this.choice = choice;
	}

	/** @param work what is to be put right before */
	public static Report of(PadChoice choice, List<Recommendation> work) {
		ChoiceLines lines = new ChoiceLines(choice);
		List<ReportTable> tables = new ArrayList<>();
		if (!work.isEmpty()) {
			tables.add(lines(Messages.of("report.choice.before"), work.stream().map(Recommendation::inOneLine)));
		}
		tables.add(lines(Messages.of("report.choice.sets"), choice.set().stream().flatMap(lines::set)));
		tables.add(lines.keys());
		tables.add(lines(Messages.of("report.choice.why"), lines.reasons()));
		lines.together().ifPresent(tables::add);
		String plan = Labels.of(choice.plan().plan());
		return new Report(Messages.of("report.choice.title", plan),
				List.of(Messages.of("report.leftOutAt", plan, Messages.of("report.choice.weights"))), tables);
	}

	private static ReportTable lines(String title, Stream<String> lines) {
		ReportTable.Maker table = new ReportTable.Maker(title).words("");
		lines.forEach(line -> table.note("  " + line));
		return table.table();
	}

	private Stream<String> set(SetChoice set) {
		Stream<String> head = Stream.of(Messages.of("report.leftOutAt", Labels.of(set.pad()),
				Messages.of("report.choice.goesInto", set.fitting().size(), choice.keys().size())));
		Stream<String> reasons = set.reasons().entrySet().stream().map(reason -> "  "
				+ ChoiceReport.words(reason.getKey()) + (reason.getValue().size() == set.fitting().size() ? ""
						: ": " + String.join(BETWEEN, reason.getValue())));
		Stream<String> lacking = byReason(set.lacking()).entrySet().stream().map(lack -> "  "
				+ Messages.of("report.choice.lackingAt", String.join(BETWEEN, lack.getValue()), lack.getKey()));
		return Stream.of(head, reasons, lacking).flatMap(lines -> lines);
	}

	private static Map<String, List<String>> byReason(Map<String, String> lacking) {
		return lacking.entrySet().stream().collect(Collectors.groupingBy(Map.Entry::getValue, TreeMap::new,
				Collectors.mapping(Map.Entry::getKey, Collectors.toList())));
	}

	private ReportTable keys() {
		ReportTable.Maker table = new ReportTable.Maker(Messages.of("report.choice.keys")).words(Messages.of("report.key"),
				Messages.of("report.pad"), Messages.of("report.choice.else"));
		choice.keys().forEach(key -> table.ofKey(key.job().name(), key.label(), ChoiceReport.chosen(key, choice),
				ChoiceReport.others(key, choice)));
		return table.table();
	}

	/** Every choice with its reasons, and the keys it is for. */
	private Stream<String> reasons() {
		Map<List<String>, List<String>> keys = new LinkedHashMap<>();
		choice.mixed().byKey().forEach((key, chosen) -> keys.computeIfAbsent(why(chosen), any -> new ArrayList<>())
				.add(key.label()));
		return keys.entrySet().stream().map(why -> Stream.concat(why.getKey().stream(),
				Stream.of("  " + at(why.getValue())))).flatMap(lines -> lines);
	}

	private static List<String> why(Candidate chosen) {
		return Stream.concat(Stream.of(Labels.of(chosen.pad())), ChoiceReport.reasons(chosen).map(line -> "  " + line)).toList();
	}

	private static String at(Collection<String> labels) {
		return Messages.of("report.choice.at", String.join(BETWEEN, labels));
	}

	private Optional<ReportTable> together() {
		Map<String, List<String>> differing = choice.mixed().differing().stream().collect(Collectors.groupingBy(
				key -> Labels.of(choice.mixed().byKey().get(key).pad()), LinkedHashMap::new,
				Collectors.mapping(KeyChoice::label, Collectors.toList())));
		String others = differing.entrySet().stream().map(entry -> entry.getKey() + " " + at(entry.getValue()))
				.collect(Collectors.joining("; "));
		return choice.mixed().main().map(Labels::of).map(main -> others.isEmpty()
				? Messages.of("report.choice.throughout", main) : Messages.of("report.choice.but", main, others))
				.map(sentence -> {
					ReportTable.Maker table = new ReportTable.Maker("").words("");
					table.note(sentence);
					return table.table();
				});
	}
}
