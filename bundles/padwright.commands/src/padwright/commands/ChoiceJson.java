package padwright.commands;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import padwright.model.stock.Backing;
import padwright.workup.choose.Candidate;
import padwright.workup.choose.KeyChoice;
import padwright.workup.choose.PadChoice;
import padwright.workup.choose.Reason;
import padwright.workup.choose.SetChoice;
import padwright.workup.inspection.Recommendation;

/** The choice of pads for programs. */
final class ChoiceJson {

	private ChoiceJson() {
	}

	static Map<String, Object> of(PadChoice choice, List<Recommendation> work) {
		Map<String, Object> json = new LinkedHashMap<>();
		json.put("plan", choice.plan().plan().getName());
		json.put("work", work.stream().map(ChoiceJson::work).toList());
		json.put("set", choice.set().stream().map(ChoiceJson::set).toList());
		json.put("keys", choice.keys().stream().map(key -> key(key, choice)).toList());
		return json;
	}

	private static Map<String, Object> work(Recommendation work) {
		Map<String, Object> json = new LinkedHashMap<>();
		json.put("where", work.where().words());
		json.put("found", work.found().words());
		json.put("work", work.work().words());
		json.put("reason", work.reason().words());
		return json;
	}

	private static Map<String, Object> set(SetChoice choice) {
		Map<String, Object> json = new LinkedHashMap<>();
		json.put("pad", choice.pad().getName());
		json.put("fits", choice.fitting());
		json.put("lacks", choice.lacking());
		json.put("reasons", choice.reasons().entrySet().stream().map(entry -> {
			Map<String, Object> reason = reason(entry.getKey());
			reason.put("keys", entry.getValue());
			return reason;
		}).toList());
		return json;
	}

	private static Map<String, Object> key(KeyChoice key, PadChoice choice) {
		Map<String, Object> json = new LinkedHashMap<>();
		json.put("key", key.job().name());
		Candidate chosen = choice.mixed().byKey().get(key);
		json.put("chosen", chosen == null ? null : chosen.pad().getName());
		json.put("candidates", key.candidates().stream().map(ChoiceJson::candidate).toList());
		return json;
	}

	private static Map<String, Object> candidate(Candidate candidate) {
		Map<String, Object> json = new LinkedHashMap<>();
		json.put("pad", candidate.pad().getName());
		json.put("backing", candidate.backing().map(Backing::getName).orElse(null));
		json.put("fits", candidate.fits());
		candidate.hindrance().ifPresent(why -> json.put("hindrance", why));
		json.put("reasons", candidate.reasons().stream().map(ChoiceJson::reason).toList());
		json.put("rules", candidate.broken());
		return json;
	}

	private static Map<String, Object> reason(Reason reason) {
		Map<String, Object> json = new LinkedHashMap<>();
		json.put("text", reason.text());
		json.put("weight", reason.weight());
		return json;
	}
}
