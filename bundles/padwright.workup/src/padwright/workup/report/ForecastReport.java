package padwright.workup.report;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

import padwright.workup.forecast.AgedPads;
import padwright.workup.forecast.PlayerForecast;
import padwright.workup.forecast.ShopForecast;
import padwright.workup.words.Days;
import padwright.workup.words.Messages;

/** Pads that players will tear, and materials past their age. */
public final class ForecastReport {

	private ForecastReport() {
	}

	public static Report of(ShopForecast forecast) {
		List<ReportTable> tables = new ArrayList<>();
		if (!forecast.players().isEmpty()) {
			tables.add(players(forecast));
		}
		tables.add(aged(forecast));
		return new Report(Messages.of("report.forecast.title"), List.of(), tables);
	}

	private static ReportTable players(ShopForecast forecast) {
		ReportTable.Maker table = new ReportTable.Maker(
				Messages.of("report.forecast.players", Figures.percent(PlayerForecast.COVERAGE)))
				.words(Messages.of("report.player"), Messages.of("report.forecast.saliva"))
				.figures(Messages.of("report.forecast.instruments"), Messages.of("report.services"), Messages.of("report.forecast.years"),
						Messages.of("report.forecast.before"), Messages.of("report.forecast.torn"),
						Messages.of("report.forecast.expected"))
				.words(Messages.of("report.interval"), Messages.of("report.nextService"));
		forecast.players().forEach(player -> table.row(player.player(),
				player.saliva().map(saliva -> Messages.of("report.saliva." + saliva.getLiteral())).orElse("-"),
				String.valueOf(player.instruments()), String.valueOf(player.services().size()), Figures.number(player.years(), 1),
				String.valueOf(player.tornBefore()), String.valueOf(player.torn()),
				Figures.number(player.forecast().expected(), 1),
				Messages.of("report.fromTo", player.forecast().low(), player.forecast().high()),
				Days.of(player.nextService())));
		return table.table();
	}

	private static ReportTable aged(ShopForecast forecast) {
		LocalDate today = forecast.today();
		ReportTable.Maker table = new ReportTable.Maker(Messages.of(
				forecast.aged().isEmpty() ? "report.forecast.noneAged" : "report.forecast.aged", today))
				.words(Messages.of("report.instrument"), Messages.of("report.player"), Messages.of("report.forecast.material"),
						Messages.of("report.forecast.fitted"), Messages.of("report.forecast.due"), "",
						Messages.of("report.keys"));
		forecast.aged().forEach(pads -> row(pads, today, table));
		forecast.leftOut().forEach(plan -> table.note(Messages.of("report.leftOut", plan.plan(), plan.why())));
		return table.table();
	}

	private static void row(AgedPads pads, LocalDate today, ReportTable.Maker table) {
		table.row(pads.instrument(), pads.player(), pads.material().material(), Days.of(pads.material().fitted()),
				Days.of(pads.material().due()), pads.material().isOverdue(today) ? Messages.of("report.past")
						: Messages.of("report.forecast.inDays", pads.material().daysLeft(today)),
				String.join(" ", pads.keys()));
	}
}
