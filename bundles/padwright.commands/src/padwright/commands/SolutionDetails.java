package padwright.commands;

import java.util.LinkedHashMap;
import java.util.Map;

import padwright.engine.calibration.CalibrationResult.ReadingError;
import padwright.workup.calibration.ToldStiffness;

/** What explains a solved key, for programs: lengths in thou, hours as on the clock. */
final class SolutionDetails {

	private SolutionDetails() {
	}

	static Map<String, Object> calibration(int rounds, ToldStiffness stiffness) {
		Map<String, Object> json = new LinkedHashMap<>();
		json.put("rounds", rounds);
		stiffness.told().ifPresentOrElse(told -> {
			json.put("stiffness", told.best().lambda());
			json.put("atLeast", told.atLeast().lambda());
			json.put("atMost", told.atMost().lambda());
			told.error().ifPresent(error -> json.put("readingError", error(error)));
		}, () -> json.put("undecided", stiffness.why().words()));
		return json;
	}

	private static Map<String, Object> error(ReadingError error) {
		Map<String, Object> json = new LinkedHashMap<>();
		json.put("offset", Json.thou(error.offset()));
		json.put("deviation", Json.thou(error.deviation()));
		return json;
	}
}
