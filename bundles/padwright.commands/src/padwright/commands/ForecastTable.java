package padwright.commands;

import java.io.PrintWriter;
import java.time.LocalDate;

import padwright.model.plan.Saliva;
import padwright.workup.forecast.AgedPads;
import padwright.workup.forecast.PlayerForecast;
import padwright.workup.forecast.ShopForecast;

/** A forecast for people. */
final class ForecastTable {

	private final ShopForecast forecast;
	private final PrintWriter out;

	private ForecastTable(ShopForecast forecast, PrintWriter out) {
		this.forecast = forecast;
		this.out = out;
	}

	static void print(PrintWriter out, ShopForecast forecast) {
		new ForecastTable(forecast, out).print();
	}

	private void print() {
		if (!forecast.players().isEmpty()) {
			printPlayers();
		}
		printAged();
		forecast.leftOut().forEach(plan -> out.println(plan.plan() + ": left out, " + plan.why()));
	}

	private void printPlayers() {
		out.println("Pads that will tear by the next yearly service, with an interval of "
				+ Amounts.percent(PlayerForecast.COVERAGE) + ". Torn: since the first service of each "
				+ "instrument; before: found then; years: of all of them together.");
		TextTable table = new TextTable("player", "saliva", "instruments", "services", "years", "before", "torn", "expected",
				"interval", "next service");
		forecast.players().forEach(player -> table.row(player.player(),
				player.saliva().map(Saliva::getLiteral).orElse("-"),
				String.valueOf(player.instruments()), String.valueOf(player.services().size()), Amounts.number(player.years(), 1),
				String.valueOf(player.tornBefore()), String.valueOf(player.torn()),
				Amounts.number(player.forecast().expected(), 1),
				player.forecast().low() + " to " + player.forecast().high(), player.nextService().toString()));
		table.print(out);
		out.println();
	}

	private void printAged() {
		LocalDate today = forecast.today();
		if (forecast.aged().isEmpty()) {
			out.println("No material is past its age on " + today + ", or will be within a year.");
		} else {
			out.println("Materials past their age on " + today + ", or within a year of it:");
			TextTable table = new TextTable("instrument", "player", "material", "fitted", "due", "", "keys");
			forecast.aged().forEach(pads -> row(pads, today, table));
			table.print(out);
		}
	}

	private static void row(AgedPads pads, LocalDate today, TextTable table) {
		table.row(pads.instrument(), pads.player(), pads.material().material(), pads.material().fitted().toString(),
				pads.material().due().toString(), pads.material().isOverdue(today) ? "past"
						: "in " + pads.material().daysLeft(today) + " days",
				String.join(" ", pads.keys()));
	}
}
