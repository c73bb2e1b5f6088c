package padwright.workup.report;

import java.time.LocalDate;
import java.util.List;

import padwright.workup.next.NextStep;
import padwright.workup.next.NextSteps;
import padwright.workup.words.Days;
import padwright.workup.words.Messages;

/** What is next, as a board: what can be done on the day first, then what waits. */
public final class NextReport {

	private NextReport() {
	}

	public static Report of(NextSteps next) {
		LocalDate today = next.today();
		return new Report(Messages.of("report.next.title"), List.of(Messages.of("report.next.lead", today)), List.of(
				table(Messages.of("report.next.ready"), next.steps().stream().filter(step -> step.isReady(today)).toList(),
						today, Messages.of("report.next.nothing")),
				waiting(next, today)));
	}

	private static ReportTable waiting(NextSteps next, LocalDate today) {
		ReportTable.Maker table = made(Messages.of("report.next.waiting"));
		next.steps().stream().filter(step -> !step.isReady(today)).forEach(step -> row(step, today, table));
		if (next.silent() > 0) {
			table.note(Messages.of("report.next.silent", next.silent()));
		}
		return table.table();
	}

	private static ReportTable table(String title, List<NextStep> steps, LocalDate today, String nothing) {
		ReportTable.Maker table = made(title);
		steps.forEach(step -> row(step, today, table));
		if (steps.isEmpty()) {
			table.note(nothing);
		}
		return table.table();
	}

	private static ReportTable.Maker made(String title) {
		return new ReportTable.Maker(title).words(Messages.of("report.next.due"), Messages.of("report.instrument"),
				Messages.of("report.player"), Messages.of("report.next.stage"), Messages.of("report.next.step"),
				Messages.of("report.keys"), Messages.of("report.next.from"), Messages.of("report.next.hand"));
	}

	private static void row(NextStep step, LocalDate today, ReportTable.Maker table) {
		table.ofPlan(step.plan(), step.due().map(day -> step.isLate(today) ? Messages.of("report.next.late", day)
				: Days.of(day)).orElse(""), step.instrument(), step.player(), step.stage(), step.told().words(), step.keys(),
				step.from().map(Days::of).orElse(""), step.hand().orElse(""));
	}
}
