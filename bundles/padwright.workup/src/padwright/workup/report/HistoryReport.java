package padwright.workup.report;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

import padwright.engine.calibration.CalibrationResult.Calibrated;
import padwright.workup.calibration.PadCalibration;
import padwright.workup.forecast.PlayerForecast;
import padwright.workup.history.InstrumentHistory;
import padwright.workup.history.KeyHistory;
import padwright.workup.history.MovementWords;
import padwright.workup.history.ShopHistory;
import padwright.workup.history.Trend;
import padwright.workup.words.Chance;
import padwright.workup.words.Days;
import padwright.workup.words.LengthWords;
import padwright.workup.words.Messages;
import padwright.workup.words.ShownUnit;
import padwright.workup.words.TwoDigits;

/** What became of pads over the years. */
public final class HistoryReport {

	private static final String NOTHING = "-";

	private HistoryReport() {
	}

	public static Report of(ShopHistory history) {
		List<ReportTable> tables = new ArrayList<>();
		history.instruments().forEach(instrument -> tables.add(of(instrument)));
		if (!history.forecast().players().isEmpty()) {
			tables.add(players(history));
		}
		tables.add(calibration(history));
		return new Report(Messages.of("report.history.title"), List.of(), tables);
	}

	private static ReportTable of(InstrumentHistory instrument) {
		ReportTable.Maker table = new ReportTable.Maker(Messages.of("report.history.instrument",
				instrument.instrument(), instrument.player(), days(instrument.services()))).words(Messages.of("report.key"),
						Messages.of("report.history.fitted")).figures(Messages.of("report.services")).words(
						Messages.of("report.history.torn"), Messages.of("report.history.moved"),
						Messages.of("report.history.spread"));
		instrument.keys().stream().filter(HistoryReport::tellsMore).forEach(key -> table.row(key.label(),
				day(key.fitted()), String.valueOf(key.services()), day(key.torn()), moved(key), trend(key.trend())));
		String others = instrument.keys().stream().filter(key -> !tellsMore(key)).map(KeyHistory::label)
				.distinct().collect(Collectors.joining(", "));
		if (!others.isEmpty()) {
			table.note(Messages.of("report.history.once", others));
		}
		return table.table();
	}

	private static boolean tellsMore(KeyHistory key) {
		return key.services() > 1 || key.torn().isPresent();
	}

	private static String day(Optional<LocalDate> day) {
		return day.map(Days::of).orElse(NOTHING);
	}

	private static String days(List<LocalDate> days) {
		return days.isEmpty() ? NOTHING : days.stream().map(Days::of).collect(Collectors.joining(" "));
	}

	private static String moved(KeyHistory key) {
		return key.moved().isEmpty() ? NOTHING
				: key.moved().stream().map(each -> each.found().getYear() + " " + MovementWords.of(each))
						.collect(Collectors.joining("; "));
	}

	private static String trend(Optional<Trend> trend) {
		return trend.map(each -> Messages.of("report.history.trend", LengthWords.roughSigned(each.perYear()), each.services(),
				Chance.of(each.chance()), ShownUnit.symbol())).orElse(NOTHING);
	}

	private static ReportTable players(ShopHistory history) {
		ReportTable.Maker table = new ReportTable.Maker("").words(Messages.of("report.player"),
				Messages.of("report.nextService"), "").figures(Messages.of("report.history.expected"))
				.words(Messages.of("report.interval"));
		history.forecast().players().forEach(player -> table.row(player.player(), Days.of(player.nextService()),
				player.nextService().isBefore(history.forecast().today()) ? Messages.of("report.past") : "",
				Figures.number(player.forecast().expected(), 1), Messages.of("report.history.intervalAt",
						player.forecast().low(), player.forecast().high(), Figures.percent(PlayerForecast.COVERAGE))));
		return table.table();
	}

	private static ReportTable calibration(ShopHistory history) {
		ReportTable.Maker table = new ReportTable.Maker("").words(Messages.of("report.pad"))
				.figures(Messages.of("report.keys"), Messages.of("report.history.rounds"))
				.words(Messages.of("report.history.stiffness"));
		history.calibration().forEach(pad -> row(pad, table));
		if (history.calibration().isEmpty()) {
			table.note(Messages.of("report.history.noStiffness"));
		}
		history.forecast().leftOut()
				.forEach(plan -> table.note(Messages.of("report.leftOut", plan.plan(), plan.why())));
		return table.table();
	}

	private static void row(PadCalibration pad, ReportTable.Maker table) {
		table.row(pad.label(), String.valueOf(pad.keys()), String.valueOf(pad.rounds()),
				pad.stiffness().told().map(HistoryReport::stiffness)
						.orElseGet(() -> Messages.of("report.history.notTold", pad.stiffness().why())));
	}

	/** With its range, and how far the readings are off if they are. */
	public static String stiffness(Calibrated told) {
		String range = Messages.of("report.history.range", new TwoDigits(told.best().lambda()),
				new TwoDigits(told.atLeast().lambda()), new TwoDigits(told.atMost().lambda()));
		return told.error().map(error -> Messages.of("report.history.off", range, LengthWords.withUnit(error.deviation())))
				.orElse(range);
	}
}
