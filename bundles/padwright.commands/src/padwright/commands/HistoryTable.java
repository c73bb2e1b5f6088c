package padwright.commands;

import java.io.PrintWriter;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

import padwright.engine.calibration.CalibrationResult.Calibrated;
import padwright.engine.calibration.CalibrationResult.Undecided;
import padwright.workup.calibration.PadCalibration;
import padwright.workup.forecast.PlayerForecast;
import padwright.workup.history.InstrumentHistory;
import padwright.workup.history.KeyHistory;
import padwright.workup.history.ShopHistory;
import padwright.workup.history.Trend;
import padwright.workup.words.Chance;

/** A history for people. */
final class HistoryTable {

	private static final String NOTHING = "-";

	private HistoryTable() {
	}

	static void print(PrintWriter out, ShopHistory history) {
		history.instruments().forEach(instrument -> print(out, instrument));
		printPlayers(out, history);
		printCalibration(out, history.calibration());
		history.forecast().leftOut().forEach(plan -> out.println(plan.plan() + ": left out, " + plan.why()));
	}

	private static void print(PrintWriter out, InstrumentHistory instrument) {
		out.println(instrument.instrument() + " of " + instrument.player() + ", serviced "
				+ days(instrument.services()));
		List<KeyHistory> telling = instrument.keys().stream().filter(HistoryTable::tellsMore).toList();
		if (!telling.isEmpty()) {
			TextTable table = new TextTable("key", "pad since", "services", "found torn", "from service to service",
					"widest gap as found");
			telling.forEach(key -> table.row(key.label(), day(key.fitted()), String.valueOf(key.services()),
					day(key.torn()), moved(key), trend(key.trend())));
			table.print(out);
		}
		String others = instrument.keys().stream().filter(key -> !tellsMore(key)).map(KeyHistory::label).distinct()
				.collect(Collectors.joining(", "));
		if (!others.isEmpty()) {
			out.println("pads in one service, not found torn: " + others);
		}
		out.println();
	}

	private static boolean tellsMore(KeyHistory key) {
		return key.services() > 1 || key.torn().isPresent();
	}

	private static String day(Optional<LocalDate> day) {
		return day.map(LocalDate::toString).orElse(NOTHING);
	}

	private static String days(List<LocalDate> days) {
		return days.isEmpty() ? NOTHING : days.stream().map(LocalDate::toString).collect(Collectors.joining(" "));
	}

	private static String moved(KeyHistory key) {
		return key.moved().isEmpty() ? NOTHING
				: key.moved().stream().map(each -> each.found().getYear() + " " + each.words())
						.collect(Collectors.joining("; "));
	}

	private static String trend(Optional<Trend> trend) {
		return trend.map(each -> Amounts.signedThou(each.perYear(), 1) + " thou a year over " + each.services() + " services ("
				+ Chance.of(each.chance()) + ")")
				.orElse(NOTHING);
	}

	private static void printPlayers(PrintWriter out, ShopHistory history) {
		if (history.forecast().players().isEmpty()) {
			return;
		}
		TextTable table = new TextTable("player", "next service", "", "pads expected torn", "interval");
		history.forecast().players().forEach(player -> table.row(player.player(), player.nextService().toString(),
				player.nextService().isBefore(history.forecast().today()) ? "past" : "",
				Amounts.number(player.forecast().expected(), 1),
				player.forecast().low() + " to " + player.forecast().high() + " at "
						+ Amounts.percent(PlayerForecast.COVERAGE)));
		table.print(out);
		out.println();
	}

	private static void printCalibration(PrintWriter out, List<PadCalibration> calibration) {
		if (calibration.isEmpty()) {
			out.println("No round has pieces between two readings, so that no stiffness can be told.");
			return;
		}
		TextTable table = new TextTable("pad", "keys", "rounds", "stiffness, with its range");
		calibration.forEach(pad -> table.row(pad.label(), String.valueOf(pad.keys()), String.valueOf(pad.rounds()),
				pad.result() instanceof Calibrated told ? SolutionNotes.stiffness(told)
						: "not told: " + ((Undecided) pad.result()).why()));
		table.print(out);
	}
}
