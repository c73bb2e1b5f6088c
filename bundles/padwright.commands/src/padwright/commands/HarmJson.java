package padwright.commands;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import padwright.workup.harm.Likely;
import padwright.workup.harm.NoteHarm;
import padwright.workup.harm.PadHarm;
import padwright.workup.harm.PlanHarm;

/** Harm of leaks for programs: loss of strength in dB and change of pitch in cents, the most harmful pad first. */
final class HarmJson {

	private HarmJson() {
	}

	static List<Map<String, Object>> of(PlanHarm harm) {
		return harm.pads().stream().map(HarmJson::pad).toList();
	}

	private static Map<String, Object> pad(PadHarm pad) {
		Map<String, Object> json = new LinkedHashMap<>();
		json.put("key", pad.key());
		json.put("mean", pad.mean());
		json.put("notes", pad.notes().stream().map(HarmJson::note).toList());
		return json;
	}

	private static Map<String, Object> note(NoteHarm note) {
		Map<String, Object> json = new LinkedHashMap<>();
		json.put("note", note.note());
		json.put("decibels", likely(note.decibels()));
		json.put("cents", likely(note.cents()));
		return json;
	}

	private static Map<String, Object> likely(Likely figure) {
		Map<String, Object> json = new LinkedHashMap<>();
		json.put("expected", figure.expected());
		json.put("low", figure.low());
		json.put("high", figure.high());
		return json;
	}
}
