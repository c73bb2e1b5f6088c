package padwright.commands;

import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

import padwright.workup.calibration.PadCalibration;
import padwright.workup.history.InstrumentHistory;
import padwright.workup.history.KeyHistory;
import padwright.workup.history.Movement;
import padwright.workup.history.ShopHistory;
import padwright.workup.history.Trend;

/** A history for programs: lengths in thou, days as in 2026-03-02. */
final class HistoryJson {

	private HistoryJson() {
	}

	static Map<String, Object> of(ShopHistory history) {
		Map<String, Object> json = new LinkedHashMap<>();
		json.put("instruments", history.instruments().stream().map(HistoryJson::instrument).toList());
		json.put("forecast", ForecastJson.of(history.forecast()));
		json.put("calibration", history.calibration().stream().map(HistoryJson::calibration).toList());
		return json;
	}

	private static Map<String, Object> instrument(InstrumentHistory instrument) {
		Map<String, Object> json = new LinkedHashMap<>();
		json.put("instrument", instrument.instrument());
		json.put("player", instrument.player());
		json.put("services", days(instrument.services()));
		json.put("keys", instrument.keys().stream().map(HistoryJson::key).toList());
		return json;
	}

	private static Map<String, Object> key(KeyHistory key) {
		Map<String, Object> json = new LinkedHashMap<>();
		json.put("key", key.label());
		json.put("services", key.services());
		key.fitted().ifPresent(day -> json.put("fitted", day.toString()));
		key.torn().ifPresent(day -> json.put("torn", day.toString()));
		json.put("moved", key.moved().stream().map(HistoryJson::movement).toList());
		key.trend().ifPresent(trend -> json.put("widestGap", trend(trend)));
		return json;
	}

	private static List<String> days(List<LocalDate> days) {
		return days.stream().map(LocalDate::toString).toList();
	}

	private static Map<String, Object> movement(Movement movement) {
		Map<String, Object> json = new LinkedHashMap<>();
		json.put("left", movement.left().toString());
		json.put("found", movement.found().toString());
		json.put("kind", movement.kind().name().toLowerCase(Locale.ROOT));
		json.put("by", Json.thou(movement.by()));
		json.put("chance", movement.chance());
		json.put("hour", movement.hour().hour());
		return json;
	}

	private static Map<String, Object> trend(Trend trend) {
		Map<String, Object> json = new LinkedHashMap<>();
		json.put("services", trend.services());
		json.put("perYear", Json.thou(trend.perYear()));
		json.put("chance", trend.chance());
		return json;
	}

	private static Map<String, Object> calibration(PadCalibration calibration) {
		Map<String, Object> json = new LinkedHashMap<>();
		json.put("pad", calibration.article());
		json.put("label", calibration.label());
		json.put("keys", calibration.keys());
		json.putAll(SolutionDetails.calibration(calibration.rounds(), calibration.stiffness()));
		return json;
	}
}
