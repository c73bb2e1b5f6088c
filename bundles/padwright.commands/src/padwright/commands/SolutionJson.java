package padwright.commands;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import padwright.engine.clock.ClockHour;
import padwright.engine.film.FilmSupply;
import padwright.engine.film.PartialShim;
import padwright.engine.length.Length;
import padwright.engine.levelling.LevellingSolution;
import padwright.engine.rim.ProfileSplit;
import padwright.workup.calibration.KeyCalibration;
import padwright.workup.solve.HeightAnswer;
import padwright.workup.solve.KeySolution;
import padwright.workup.solve.LevelAnswer;
import padwright.workup.solve.PlanSolution;
import padwright.workup.solve.WorstReading;

/** A solved plan for programs: lengths in thou, hours as on the clock. */
final class SolutionJson {

	private SolutionJson() {
	}

	static Map<String, Object> of(PlanSolution solution) {
		Map<String, Object> json = new LinkedHashMap<>();
		json.put("plan", solution.plan().plan().getName());
		json.put("tolerance", Json.thou(solution.plan().tolerance()));
		json.put("keys", solution.keys().stream().map(SolutionJson::key).toList());
		return json;
	}

	private static Map<String, Object> key(KeySolution key) {
		Map<String, Object> json = new LinkedHashMap<>();
		json.put("key", key.job().name());
		key.level().ifPresent(answer -> addLevel(answer, json));
		key.height().ifPresent(answer -> json.put("height", height(answer)));
		key.level().ifPresent(answer -> json.put("split",
				SolutionDetails.split(ProfileSplit.of(answer.rim().profile()))));
		WorstReading.of(key).ifPresent(worst -> json.put("worstAfter", SolutionDetails.worst(worst)));
		KeyCalibration.of(key.job())
				.ifPresent(calibration -> json.put("calibration",
						SolutionDetails.calibration(calibration.rounds(), calibration.result())));
		if (!key.unsolved().isEmpty()) {
			json.put("unsolved", key.unsolved());
		}
		return json;
	}

	private static void addLevel(LevelAnswer answer, Map<String, Object> json) {
		LevellingSolution solution = answer.solution();
		json.put("profile", Arrays.stream(answer.rim().profile().toNanometres()).mapToObj(Length::ofNanometres)
				.map(Json::thou).toList());
		json.put("stiffness", answer.problem().stiffness().lambda());
		json.put("films", answer.problem().films().stream().map(FilmSupply::thickness).map(Json::thou).toList());
		json.put("pieces", solution.pieces().stream().map(SolutionJson::piece).toList());
		json.put("before", Json.thou(solution.spreadBefore()));
		json.put("after", Json.thou(solution.spreadAfter()));
		json.put("proof", solution.proof().optimal() ? "optimal" : "best found");
		if (!solution.proof().optimal()) {
			json.put("bound", Json.thou(solution.proof().bound()));
		}
		if (!answer.rim().consistent()) {
			json.put("contradictions", answer.rim().contradictions().stream()
					.map(contradiction -> contradiction.reading().hour().hour()).toList());
		}
	}

	private static Map<String, Object> piece(PartialShim piece) {
		Map<String, Object> json = new LinkedHashMap<>();
		json.put("from", hour(piece.arc().from()));
		json.put("hours", piece.arc().halfHours() / 2);
		json.put("thou", Json.thou(piece.thickness()));
		return json;
	}

	private static Number hour(ClockHour hour) {
		return hour.hour();
	}

	private static Map<String, Object> height(HeightAnswer answer) {
		List<Length> pieces = answer.solution().pieces();
		Map<String, Object> json = new LinkedHashMap<>();
		json.put("target", Json.thou(answer.work().target()));
		json.put("pieces", pieces.stream().map(Json::thou).toList());
		json.put("error", Json.thou(answer.solution().error()));
		return json;
	}
}
