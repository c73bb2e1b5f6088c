package padwright.commands;

import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;

import padwright.engine.coupling.Adjuster;
import padwright.engine.coupling.Adjustment;
import padwright.engine.coupling.Bumper;
import padwright.engine.coupling.Coupling;
import padwright.engine.coupling.FilmChange;
import padwright.engine.coupling.Regulation;
import padwright.engine.coupling.Screw;
import padwright.engine.coupling.ScrewTurn;
import padwright.engine.coupling.Upset;
import padwright.workup.regulate.AdjustmentWords;
import padwright.workup.regulate.BedChange;
import padwright.workup.regulate.RegulationStep;
import padwright.workup.regulate.RegulationWork;

/** The regulation of a plan for programs: lengths in thou; travel and turns positive toward the driven key. */
final class RegulationJson {

	private RegulationJson() {
	}

	static Map<String, Object> of(RegulationWork work) {
		Map<String, Object> json = new LinkedHashMap<>();
		json.put("plan", work.plan().plan().getName());
		json.put("steps", work.steps().stream().map(RegulationJson::step).toList());
		json.put("changes", work.changes().stream().map(RegulationJson::change).toList());
		json.put("upsets", work.upsets().stream().map(RegulationJson::upset).toList());
		return json;
	}

	private static Map<String, Object> step(RegulationStep step) {
		Coupling coupling = step.coupling();
		Map<String, Object> json = new LinkedHashMap<>();
		json.put("driver", coupling.driver());
		json.put("driven", coupling.driven());
		addAdjuster(coupling.adjuster(), json);
		json.put("ratio", coupling.ratio());
		step.found().ifPresent(found -> addFound(found, json));
		return json;
	}

	private static void addAdjuster(Adjuster adjuster, Map<String, Object> json) {
		if (adjuster instanceof Screw screw) {
			json.put("adjuster", "screw");
			json.put("pitch", Json.thou(screw.pitch()));
		} else if (adjuster instanceof Bumper bumper) {
			json.put("adjuster", bumper.material().name().toLowerCase(Locale.ROOT));
		}
	}

	private static void addFound(Regulation found, Map<String, Object> json) {
		json.put("light", Json.thou(found.light()));
		json.put("at", found.side().name().toLowerCase(Locale.ROOT));
		json.put("travel", Json.thou(found.travel()));
		Adjustment adjustment = found.adjustment();
		if (adjustment instanceof ScrewTurn turn) {
			json.put("turns", turn.turns());
		} else if (adjustment instanceof FilmChange film) {
			json.put("films", film.pieces().stream().map(Json::thou).toList());
			json.put("remainder", Json.thou(film.remainder()));
		}
		json.put("do", AdjustmentWords.of(adjustment));
	}

	private static Map<String, Object> change(BedChange change) {
		Map<String, Object> json = new LinkedHashMap<>();
		json.put("key", change.key());
		json.put("byStack", Json.thou(change.byStack()));
		json.put("byFilm", Json.thou(change.byFilm()));
		json.put("total", Json.thou(change.total()));
		return json;
	}

	private static Map<String, Object> upset(Upset upset) {
		Map<String, Object> json = new LinkedHashMap<>();
		json.put("driver", upset.driver());
		json.put("lightAt", upset.lightAt());
		json.put("light", Json.thou(upset.light()));
		return json;
	}
}
