package padwright.workup.report;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

import padwright.engine.length.Length;
import padwright.engine.seating.SeatAnswer;
import padwright.workup.parts.Labels;
import padwright.workup.solve.HeightAnswer;
import padwright.workup.solve.KeySolution;
import padwright.workup.solve.LevelAnswer;
import padwright.workup.solve.PadGap;
import padwright.workup.solve.PlanSolution;
import padwright.workup.solve.SeatWords;
import padwright.workup.words.Chance;
import padwright.workup.words.GapWords;
import padwright.workup.words.LengthWords;
import padwright.workup.words.Messages;
import padwright.workup.words.ShownUnit;

/** A solved plan, key by key. */
public final class SolutionReport {

	private static final String NOTHING = "-";

	private SolutionReport() {
	}

	public static Report of(PlanSolution solution) {
		String plan = solution.plan().plan().getName();
		return new Report(Messages.of("report.solve.title", plan),
				List.of(Messages.of("report.solve.lead", plan, solution.plan().tolerance(), ShownUnit.symbol()),
						Messages.of("report.solve.level")),
				List.of(keys(solution), notes(solution)));
	}

	private static ReportTable keys(PlanSolution solution) {
		ReportTable.Maker table = new ReportTable.Maker("").words(Messages.of("report.key"),
				Messages.of("report.solve.full")).figures(Messages.of("report.solve.sum"), Messages.of("report.solve.error"))
				.words(Messages.of("report.solve.now"), Messages.of("report.solve.after"), Messages.of("report.solve.gap"),
						Messages.of("report.solve.toDo"));
		solution.keys().forEach(key -> row(key, table));
		return table.table();
	}

	private static void row(KeySolution key, ReportTable.Maker table) {
		table.ofKey(key.job().name(), Labels.ofKey(key.job().plan(), key.job().name()),
				key.height().map(SolutionReport::stack).orElse(NOTHING),
				key.height().map(answer -> LengthWords.figure(answer.solution().sum())).orElse(""),
				key.height().map(answer -> LengthWords.roughSigned(answer.work().shownError(answer.solution().sum()))).orElse(""),
				key.level().map(answer -> now(answer.seat())).orElse(NOTHING),
				key.level().map(answer -> after(answer.seat())).orElse(""),
				key.level().map(answer -> gap(answer.seat())).orElse(""),
				key.level().map(SolutionReport::toDo).orElse(""));
	}

	private static String stack(HeightAnswer answer) {
		List<Length> pieces = answer.solution().pieces();
		return pieces.isEmpty() ? Messages.of("report.solve.none")
				: pieces.stream().map(LengthWords::figure).collect(Collectors.joining(" + "));
	}

	private static String now(SeatAnswer seat) {
		return seat.heldOff() ? Messages.of("report.solve.heldOff") : Chance.of(seat.chanceNow());
	}

	private static String after(SeatAnswer seat) {
		return seat.nothing() ? "" : Chance.of(seat.chance());
	}

	private static String gap(SeatAnswer seat) {
		return seat.nothing() ? "" : GapWords.range(seat.gapAfter(), PadGap.widest(seat.gapAfter()));
	}

	private static String toDo(LevelAnswer answer) {
		return answer.seat().heldOff() ? Messages.of("report.solve.regulateFirst") : SeatWords.toDo(answer.seat());
	}

	/** What explains each key. */
	private static ReportTable notes(PlanSolution solution) {
		Map<String, List<String>> byKey = new LinkedHashMap<>();
		solution.keys().forEach(key -> byKey.put(Labels.ofKey(key.job().plan(), key.job().name()), SolutionNotes.of(key)));
		ReportTable.Maker table = new ReportTable.Maker("").words("");
		KeyNotes.of(byKey).forEach(table::note);
		return table.table();
	}
}
