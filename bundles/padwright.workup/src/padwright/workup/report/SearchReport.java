package padwright.workup.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

import padwright.model.plan.Plan;
import padwright.model.systems.EffectiveSystem;
import padwright.workup.job.PlanLines.Line;
import padwright.workup.parts.Labels;
import padwright.workup.words.Days;
import padwright.workup.words.Messages;
import padwright.workup.words.Texts;

/** The plans of a shop in which something is said: a serial, a player, an instrument, a day, a finding. */
public final class SearchReport {

	private SearchReport() {
	}

	/**
	 * A plan that is searched.
	 *
	 * @param lines what is to be put right in it, and what it says of its instrument
	 */
	public record Searched(Plan plan, List<Line> lines) {

		public Searched {
			lines = List.copyOf(lines);
		}
	}

	/** A row for each plan that says every word of {@code sought}, and one for each of its lines that does. */
	public static Report of(List<Searched> plans, String sought) {
		List<String> words = Stream.of(sought.strip().toLowerCase(Locale.ROOT).split("\\s+")).toList();
		ReportTable.Maker table = new ReportTable.Maker("").words(Messages.of("report.plan"),
				Messages.of("report.instrument"), Messages.of("report.serial"), Messages.of("report.player"),
				Messages.of("report.date"), Messages.of("report.search.finding"));
		for (Searched searched : plans) {
			List<String> facts = facts(searched.plan());
			if (says(facts, words)) {
				row(table, facts, "");
			}
			searched.lines().stream().filter(line -> says(line.said(), words)
					|| !says(facts, words) && says(Stream.concat(facts.stream(), line.said().stream()).toList(), words))
					.forEach(line -> row(table, facts, shown(line)));
		}
		ReportTable made = table.table();
		return new Report(Messages.of("report.search.title", sought.strip()),
				List.of(Messages.of("report.search.lead", sought.strip(), made.rows().size(), plans.size())), List.of(made));
	}

	/** As it is written, to those who read the words of the language; else in theirs. */
	private static String shown(Line line) {
		return line.written().isEmpty() || !Texts.language().getLanguage().equals(Locale.ENGLISH.getLanguage()) ? line.words()
				: line.written();
	}

	private static void row(ReportTable.Maker table, List<String> facts, String line) {
		List<String> cells = new ArrayList<>(facts);
		cells.add(line);
		table.ofPlan(facts.get(0), cells.toArray(String[]::new));
	}

	private static List<String> facts(Plan plan) {
		return List.of(said(plan.getName()),
				EffectiveSystem.lineage(plan.getSystem()).stream().reduce((outer, inner) -> inner).map(Labels::of).orElse(""),
				said(plan.getSerial()),
				Optional.ofNullable(plan.getPlayer()).map(player -> said(player.getName())).orElse(""),
				plan.getDate() == null ? "" : Days.of(plan.getDate()));
	}

	private static String said(String text) {
		return text == null ? "" : text;
	}

	private static boolean says(List<String> texts, List<String> words) {
		return words.stream().allMatch(word -> texts.stream().anyMatch(text -> text.toLowerCase(Locale.ROOT).contains(word)));
	}
}
