package padwright.commands;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

import padwright.engine.clock.Arc;
import padwright.engine.clock.ClockHour;
import padwright.engine.evidence.DoubtedReading;
import padwright.engine.evidence.GapBand;
import padwright.engine.film.FilmSupply;
import padwright.engine.film.PartialShim;
import padwright.engine.length.Length;
import padwright.engine.length.LengthUnit;
import padwright.engine.seating.NextHour;
import padwright.engine.seating.SeatAnswer;
import padwright.workup.calibration.KeyCalibration;
import padwright.workup.solve.HeightAnswer;
import padwright.workup.solve.KeySolution;
import padwright.workup.solve.LevelAnswer;
import padwright.workup.solve.PlanSolution;
import padwright.workup.words.Phrase;

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
		KeyCalibration.of(key.job())
				.ifPresent(calibration -> json.put("calibration",
						SolutionDetails.calibration(calibration.rounds(), calibration.stiffness())));
		if (!key.unsolved().isEmpty()) {
			json.put("unsolved", key.unsolved().stream().map(Phrase::words).toList());
		}
		return json;
	}

	private static void addLevel(LevelAnswer answer, Map<String, Object> json) {
		SeatAnswer seat = answer.seat();
		json.put("pieces", pieces(seat.place()));
		json.put("takeOut", pieces(seat.takeOut()));
		json.put("stackChange", Json.thou(seat.fullShims()));
		json.put("chanceNow", percent(seat.chanceNow()));
		json.put("chance", percent(seat.chance()));
		json.put("gap", gap(seat.gapNow()));
		json.put("gapAfter", gap(seat.gapAfter()));
		json.put("heldOff", seat.heldOff());
		seat.whyNothing().ifPresent(why -> json.put("whyNothing", word(why)));
		json.put("limit", word(seat.limit()));
		seat.next().ifPresent(next -> json.put("next", next(next)));
		json.put("feelAgain", seat.doubted().stream().map(SolutionJson::doubted).toList());
		json.put("unread", seat.unread().stream().map(SolutionJson::arc).toList());
		json.put("proven", seat.proven());
		json.put("stiffness", answer.pad().model().stiffness().lambda());
		json.put("armAssumed", answer.pad().assumedArm());
		json.put("films", answer.problem().films().stream().map(FilmSupply::thickness).map(Json::thou).toList());
	}

	private static List<Object> pieces(List<PartialShim> pieces) {
		return List.copyOf(pieces.stream().map(SolutionJson::piece).toList());
	}

	/** A chance is known to whole per cent. */
	private static BigDecimal percent(double chance) {
		return BigDecimal.valueOf(Math.round(100 * chance), 2);
	}

	/** At the stations from 12 o'clock on by half hours, in tenths of a thou: feelers tell no more. */
	private static List<Object> gap(GapBand band) {
		List<Object> stations = new ArrayList<>();
		for (int station = 0; station < ClockHour.STATIONS; station++) {
			ClockHour hour = new ClockHour(station);
			Map<String, Object> json = new LinkedHashMap<>();
			json.put("low", tenths(band.low().at(hour)));
			json.put("mid", tenths(band.mid().at(hour)));
			json.put("high", tenths(band.high().at(hour)));
			stations.add(json);
		}
		return stations;
	}

	private static BigDecimal tenths(Length length) {
		return length.in(LengthUnit.THOU, 1);
	}

	private static String word(Enum<?> constant) {
		return constant.name().toLowerCase(Locale.ROOT).replace('_', ' ');
	}

	private static Map<String, Object> next(NextHour next) {
		Map<String, Object> json = new LinkedHashMap<>();
		json.put("hour", hour(next.hour()));
		json.put("gain", percent(next.gain()));
		json.put("open", percent(next.open()));
		return json;
	}

	private static Map<String, Object> doubted(DoubtedReading doubt) {
		Map<String, Object> json = new LinkedHashMap<>();
		json.put("round", doubt.round() + 1);
		json.put("hour", hour(doubt.reading().hour()));
		json.put("doubt", percent(doubt.doubt()));
		return json;
	}

	private static Map<String, Object> arc(Arc arc) {
		Map<String, Object> json = new LinkedHashMap<>();
		json.put("from", hour(arc.from()));
		json.put("to", hour(arc.to()));
		return json;
	}

	private static Map<String, Object> piece(PartialShim piece) {
		Map<String, Object> json = new LinkedHashMap<>();
		json.put("from", hour(piece.arc().from()));
		json.put("hours", BigDecimal.valueOf(piece.arc().halfHours() * 5L, 1).stripTrailingZeros());
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
		json.put("tolerance", Json.thou(answer.work().tolerance().worstCase()));
		json.put("likelyTolerance", Json.thou(answer.work().tolerance().rootSumSquare()));
		json.put("measured", answer.work().isMeasured());
		return json;
	}
}
