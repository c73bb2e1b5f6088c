package padwright.workup.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import padwright.workup.choose.Candidate;
import padwright.workup.choose.KeyChoice;
import padwright.workup.choose.PadChoice;
import padwright.workup.choose.Reason;
import padwright.workup.choose.SetChoice;
import padwright.workup.inspection.Recommendation;
import padwright.workup.parts.Labels;
import padwright.workup.words.Messages;

/** Which pads suit an instrument and its player: for the whole set, and for each key; with reasons. */
public final class ChoiceReport {

	private ChoiceReport() {
	}

	/** @param work what is to be put right before */
	public static Report of(PadChoice choice, List<Recommendation> work) {
		List<ReportTable> tables = new ArrayList<>();
		tables.add(keys(choice));
		tables.add(sets(choice));
		if (!work.isEmpty()) {
			tables.add(before(work));
		}
		return new Report(Messages.of("report.choice.title", Labels.of(choice.plan().plan())),
				List.of(Messages.of("report.choice.weights")), tables);
	}

	private static ReportTable keys(PadChoice choice) {
		ReportTable.Maker table = new ReportTable.Maker(Messages.of("report.choice.keys")).words(Messages.of("report.key"),
				Messages.of("report.pad"), Messages.of("report.choice.why"), Messages.of("report.choice.else"));
		choice.keys().forEach(key -> table.ofKey(key.job().name(), key.label(), chosen(key, choice),
				why(choice.mixed().byKey().get(key)), others(key, choice)));
		return table.table();
	}

	/** The pad that was chosen for a key. */
	static String chosen(KeyChoice key, PadChoice choice) {
		Candidate chosen = choice.mixed().byKey().get(key);
		return chosen == null ? Messages.of("report.choice.nothing") : Labels.of(chosen.pad());
	}

	/** The other pads that would go into a key, the best first. */
	static String others(KeyChoice key, PadChoice choice) {
		Candidate chosen = choice.mixed().byKey().get(key);
		return key.candidates().stream().filter(candidate -> candidate.fits() && candidate != chosen)
				.map(candidate -> Labels.of(candidate.pad())).collect(Collectors.joining(", "));
	}

	private static String why(Candidate chosen) {
		return chosen == null ? "" : reasons(chosen).collect(Collectors.joining("; "));
	}

	/** What speaks for and against a pad, and the rules that it breaks. */
	static Stream<String> reasons(Candidate chosen) {
		return Stream.concat(chosen.reasons().stream().map(ChoiceReport::words),
				chosen.broken().stream().map(rule -> Messages.of("report.choice.rule", rule)));
	}

	private static ReportTable sets(PadChoice choice) {
		ReportTable.Maker table = new ReportTable.Maker(Messages.of("report.choice.sets")).words(Messages.of("report.pad"),
				Messages.of("report.choice.into"), Messages.of("report.choice.why"), Messages.of("report.choice.lacking"));
		choice.set().forEach(each -> table.row(Labels.of(each.pad()),
				Messages.of("report.choice.of", each.fitting().size(), choice.keys().size()), reasons(each),
				each.lacking().entrySet().stream().map(lack -> Messages.of("report.leftOutAt", lack.getKey(), lack.getValue()))
						.collect(Collectors.joining("; "))));
		return table.table();
	}

	private static String reasons(SetChoice choice) {
		return choice.reasons().entrySet().stream().map((Map.Entry<Reason, List<String>> reason) -> words(reason.getKey())
				+ (reason.getValue().size() == choice.fitting().size() ? ""
						: ": " + String.join(", ", reason.getValue()))).collect(Collectors.joining("; "));
	}

	private static ReportTable before(List<Recommendation> work) {
		ReportTable.Maker table = new ReportTable.Maker(Messages.of("report.choice.before"))
				.words(Messages.of("report.choice.work"));
		work.forEach(each -> table.row(each.inOneLine()));
		return table.table();
	}

	/** With its weight. */
	static String words(Reason reason) {
		return Messages.of(reason.isFor() ? "report.choice.for" : "report.choice.against",
				Figures.plain(reason.weight().abs()), reason.text());
	}
}
