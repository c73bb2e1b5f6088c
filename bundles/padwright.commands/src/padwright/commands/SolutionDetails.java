package padwright.commands;

import java.util.LinkedHashMap;
import java.util.Map;

import padwright.engine.calibration.CalibrationResult;
import padwright.engine.calibration.CalibrationResult.Calibrated;
import padwright.engine.calibration.CalibrationResult.ReadingError;
import padwright.engine.calibration.CalibrationResult.Undecided;
import padwright.engine.clock.ClockHour;
import padwright.engine.rim.Harmonic;
import padwright.engine.rim.ProfileSplit;
import padwright.workup.solve.WorstReading;

/** What explains a solved key, for programs: lengths in thou, hours as on the clock. */
final class SolutionDetails {

	private SolutionDetails() {
	}

	/** Tilt and saddle from tight to open; their hours only where they have any height. */
	static Map<String, Object> split(ProfileSplit split) {
		Map<String, Object> json = new LinkedHashMap<>();
		json.put("height", Json.thou(split.height()));
		json.put("tilt", wave(split.tilt()));
		json.put("saddle", wave(split.saddle()));
		json.put("rest", Json.thou(split.rest()));
		json.put("floatable", Json.thou(split.floatable()));
		json.put("filmOnly", Json.thou(split.filmOnly()));
		return json;
	}

	private static Map<String, Object> wave(Harmonic wave) {
		Map<String, Object> json = new LinkedHashMap<>();
		json.put("thou", Json.thou(wave.fromTightToOpen()));
		if (wave.fromTightToOpen().signum() > 0) {
			json.put("openAt", wave.openHours().stream().map(ClockHour::hour).toList());
		}
		return json;
	}

	static Map<String, Object> worst(WorstReading worst) {
		Map<String, Object> json = new LinkedHashMap<>();
		json.put("hour", worst.hour().hour());
		json.put("gap", Json.thou(worst.gap()));
		return json;
	}

	static Map<String, Object> calibration(int rounds, CalibrationResult result) {
		Map<String, Object> json = new LinkedHashMap<>();
		json.put("rounds", rounds);
		if (result instanceof Calibrated told) {
			json.put("stiffness", told.best().lambda());
			json.put("atLeast", told.atLeast().lambda());
			json.put("atMost", told.atMost().lambda());
			told.error().ifPresent(error -> json.put("readingError", error(error)));
		} else if (result instanceof Undecided undecided) {
			json.put("undecided", undecided.why());
		}
		return json;
	}

	private static Map<String, Object> error(ReadingError error) {
		Map<String, Object> json = new LinkedHashMap<>();
		json.put("offset", Json.thou(error.offset()));
		json.put("deviation", Json.thou(error.deviation()));
		return json;
	}
}
