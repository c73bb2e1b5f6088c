package padwright.commands;

import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.Map;

import padwright.engine.forecast.TearRate;
import padwright.workup.forecast.AgedPads;
import padwright.workup.forecast.LeftOutPlan;
import padwright.workup.forecast.PlayerForecast;
import padwright.workup.forecast.ShopForecast;

/** A forecast for programs: days as in 2026-03-02, pads as numbers. */
final class ForecastJson {

	private ForecastJson() {
	}

	static Map<String, Object> of(ShopForecast forecast) {
		Map<String, Object> json = new LinkedHashMap<>();
		json.put("on", forecast.today().toString());
		json.put("players", forecast.players().stream().map(ForecastJson::player).toList());
		json.put("aged", forecast.aged().stream().map(pads -> aged(pads, forecast.today())).toList());
		json.put("leftOut", forecast.leftOut().stream().map(ForecastJson::leftOut).toList());
		return json;
	}

	private static Map<String, Object> player(PlayerForecast player) {
		Map<String, Object> json = new LinkedHashMap<>();
		json.put("player", player.player());
		player.saliva().ifPresent(saliva -> json.put("saliva", saliva.getLiteral()));
		json.put("instruments", player.instruments());
		json.put("services", player.services().stream().map(LocalDate::toString).toList());
		json.put("tornBefore", player.tornBefore());
		json.put("torn", player.torn());
		json.put("years", player.years());
		json.put("rate", rate(player.rate()));
		json.put("nextService", player.nextService().toString());
		json.put("expected", player.forecast().expected());
		json.put("low", player.forecast().low());
		json.put("high", player.forecast().high());
		json.put("coverage", player.forecast().coverage());
		return json;
	}

	private static Map<String, Object> rate(TearRate rate) {
		Map<String, Object> json = new LinkedHashMap<>();
		json.put("shape", rate.shape());
		json.put("years", rate.years());
		json.put("mean", rate.mean());
		return json;
	}

	private static Map<String, Object> aged(AgedPads pads, LocalDate today) {
		Map<String, Object> json = new LinkedHashMap<>();
		json.put("instrument", pads.instrument());
		json.put("player", pads.player());
		json.put("material", pads.material().material());
		json.put("keys", pads.keys());
		json.put("fitted", pads.material().fitted().toString());
		json.put("due", pads.material().due().toString());
		json.put("overdue", pads.material().isOverdue(today));
		return json;
	}

	private static Map<String, Object> leftOut(LeftOutPlan plan) {
		Map<String, Object> json = new LinkedHashMap<>();
		json.put("plan", plan.plan());
		json.put("why", plan.why().words());
		return json;
	}
}
