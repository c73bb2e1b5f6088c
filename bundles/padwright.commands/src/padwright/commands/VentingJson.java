package padwright.commands;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import padwright.workup.report.VentingReport;
import padwright.workup.sound.NoteVenting;
import padwright.workup.sound.PadVenting;
import padwright.workup.sound.SystemSound;

/** What raised pads do to the notes, for programs: rises in mm, deviations in cents, strengths in dB. */
final class VentingJson {

	private VentingJson() {
	}

	static Map<String, Object> of(SystemSound system, List<PadVenting> pads) {
		Map<String, Object> json = new LinkedHashMap<>();
		json.put("system", system.system().getName());
		json.put("keys", pads.stream().map(VentingJson::pad).toList());
		return json;
	}

	private static Map<String, Object> pad(PadVenting pad) {
		Map<String, Object> json = new LinkedHashMap<>();
		json.put("key", pad.key());
		json.put("rise", pad.rise());
		json.put("assumed", pad.isAssumed());
		pad.enough().ifPresent(enough -> json.put("enough", enough));
		json.put("notes", pad.notes().stream().map(VentingJson::note).toList());
		return json;
	}

	static Map<String, Object> of(SystemSound system, PadVenting pad) {
		Map<String, Object> json = new LinkedHashMap<>();
		json.put("system", system.system().getName());
		json.put("key", pad.key());
		json.put("rises", VentingReport.RISES.stream().map(rise -> at(pad, rise)).toList());
		return json;
	}

	private static Map<String, Object> at(PadVenting pad, double rise) {
		Map<String, Object> json = new LinkedHashMap<>();
		json.put("rise", rise);
		json.put("notes", pad.notes(rise).stream().map(VentingJson::note).toList());
		return json;
	}

	private static Map<String, Object> note(NoteVenting note) {
		Map<String, Object> json = new LinkedHashMap<>();
		json.put("note", note.note());
		json.put("cents", note.cents());
		json.put("decibels", note.decibels());
		json.put("byTenth", note.byTenth());
		return json;
	}
}
