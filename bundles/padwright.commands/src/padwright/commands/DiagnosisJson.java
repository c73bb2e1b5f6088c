package padwright.commands;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import padwright.engine.diagnosis.Diagnosis;
import padwright.engine.diagnosis.NextNote;
import padwright.engine.diagnosis.NoteFingering;
import padwright.engine.diagnosis.SuspectSet;
import padwright.engine.diagnosis.UnexplainedNote;
import padwright.model.systems.EffectiveKey;
import padwright.workup.diagnosis.PlanDiagnosis;

/** A diagnosis for programs: shares and chances of one, information in bits. */
final class DiagnosisJson {

	private DiagnosisJson() {
	}

	static Map<String, Object> of(PlanDiagnosis found) {
		Diagnosis diagnosis = found.diagnosis();
		Map<String, Object> json = new LinkedHashMap<>();
		json.put("plan", found.plan().plan().getName());
		json.put("bad", names(diagnosis.notes().bad()));
		json.put("good", names(diagnosis.notes().good()));
		json.put("suspects", diagnosis.suspects().stream().map(DiagnosisJson::suspects).toList());
		json.put("moreMayExist", diagnosis.moreMayExist());
		json.put("contradictions", diagnosis.contradictions().stream().map(DiagnosisJson::contradiction).toList());
		found.next().ifPresent(next -> json.put("next", next(next)));
		json.put("weights", weights(found));
		return json;
	}

	private static List<String> names(List<NoteFingering> notes) {
		return notes.stream().map(NoteFingering::note).toList();
	}

	private static Map<String, Object> suspects(SuspectSet set) {
		Map<String, Object> json = new LinkedHashMap<>();
		json.put("pads", set.pads());
		json.put("share", set.share());
		return json;
	}

	private static Map<String, Object> contradiction(UnexplainedNote contradiction) {
		Map<String, Object> json = new LinkedHashMap<>();
		json.put("note", contradiction.note());
		json.put("clearedBy", contradiction.clearedBy());
		return json;
	}

	private static Map<String, Object> next(NextNote next) {
		Map<String, Object> json = new LinkedHashMap<>();
		json.put("note", next.note().note());
		json.put("closes", next.note().closedPads());
		json.put("chanceBad", next.chanceBad());
		json.put("bits", next.bits());
		return json;
	}

	private static Map<String, Object> weights(PlanDiagnosis found) {
		Map<String, Object> json = new LinkedHashMap<>();
		found.plan().system().keys().stream().map(EffectiveKey::name)
				.forEach(pad -> json.put(pad, found.weights().of(pad)));
		return json;
	}
}
