package padwright.commands;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

import padwright.engine.drift.Climate;
import padwright.engine.drift.Drift;
import padwright.engine.drift.DriftVerdict;
import padwright.engine.drift.HeightChange;
import padwright.engine.drift.LayerDrift;
import padwright.workup.drift.KeyDrift;
import padwright.workup.drift.PlanDrift;
import padwright.workup.drift.UnknownLayer;

/** Drift for programs: changes in thou, positive toward the rim. */
final class DriftJson {

	private DriftJson() {
	}

	static Map<String, Object> of(PlanDrift drift) {
		Map<String, Object> json = new LinkedHashMap<>();
		json.put("plan", drift.plan().plan().getName());
		json.put("tolerance", Json.thou(drift.plan().tolerance()));
		json.put("bench", climate(drift.bench()));
		json.put("home", climate(drift.home()));
		json.put("keys", drift.keys().stream().map(key -> key(key, drift)).toList());
		return json;
	}

	private static Map<String, Object> climate(Climate climate) {
		Map<String, Object> json = new LinkedHashMap<>();
		json.put("celsius", climate.celsius());
		json.put("relativeHumidity", climate.relativeHumidity());
		return json;
	}

	private static Map<String, Object> key(KeyDrift key, PlanDrift drift) {
		Map<String, Object> json = new LinkedHashMap<>();
		json.put("key", key.key());
		key.known().ifPresent(known -> addKnown(known, json));
		key.opened().ifPresent(gap -> json.put("opens", change(gap)));
		Optional<String> verdict = key.verdictOfKnown(drift.plan().tolerance()).map(DriftJson::words);
		verdict.ifPresent(words -> json.put("verdictOfKnown", words));
		json.put("verdict", verdict.filter(words -> key.complete()).orElse("unknown"));
		json.put("unknown", key.unknown().stream().map(UnknownLayer::toString).toList());
		return json;
	}

	private static String words(DriftVerdict verdict) {
		return verdict.name().toLowerCase(Locale.ROOT).replace('_', ' ');
	}

	private static void addKnown(Drift known, Map<String, Object> json) {
		json.put("known", change(known.total()));
		json.put("largest", known.largest().layer().name());
		json.put("layers", known.layers().stream().map(DriftJson::layer).toList());
	}

	private static Map<String, Object> layer(LayerDrift layer) {
		Map<String, Object> json = new LinkedHashMap<>();
		json.put("layer", layer.layer().name());
		json.put("thickness", Json.thou(layer.layer().thickness()));
		json.put("change", change(layer.change()));
		return json;
	}

	private static List<Object> change(HeightChange change) {
		return List.of(Json.thou(change.low()), Json.thou(change.high()));
	}
}
