package padwright.commands;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

import padwright.engine.acoustics.Resonance;
import padwright.workup.sound.FingeredTone;
import padwright.workup.sound.HoleEffect;
import padwright.workup.sound.LeftOutNote;
import padwright.workup.sound.OctaveSound;
import padwright.workup.sound.ScaleSound;
import padwright.workup.sound.SystemSound;
import padwright.workup.sound.ToneSound;

/** How a system sounds for programs: frequencies in Hz, deviations in cents, strengths in dB. */
final class SoundJson {

	private SoundJson() {
	}

	/** @param holes whether what 0.1 mm does at every hole is told, too */
	static Map<String, Object> of(SystemSound system, boolean holes) {
		ScaleSound scale = ScaleSound.of(system);
		Map<String, Object> json = new LinkedHashMap<>();
		json.put("system", system.system().getName());
		json.put("pitch", system.mechanism().system().pitch());
		json.put("temperature", system.mechanism().system().temperature());
		json.put("notes", notes(scale));
		json.put("octaves", scale.octaves().stream().map(SoundJson::octave).toList());
		if (holes) {
			json.put("holes", scale.holeEffects(system.instrument().orElseThrow()).stream().map(SoundJson::effect)
					.toList());
		}
		json.put("assumedRises", system.assumedRises());
		json.put("undercut", system.undercut());
		json.put("leftOut", system.leftOut().stream().map(SoundJson::leftOut).toList());
		return json;
	}

	static List<Map<String, Object>> notes(ScaleSound scale) {
		return scale.notes().stream().map(SoundJson::note).toList();
	}

	private static Map<String, Object> note(ToneSound sound) {
		FingeredTone tone = sound.tone();
		Map<String, Object> json = new LinkedHashMap<>();
		json.put("name", tone.name());
		json.put("note", tone.fingering().note());
		json.put("offset", tone.fingering().cents());
		json.put("label", tone.fingering().label().orElse(""));
		json.put("purpose", tone.fingering().fingering().getPurpose().getLiteral());
		json.put("octave", sound.octave());
		json.put("target", tone.note().hertz());
		sound.sound().played().ifPresent(played -> {
			json.put("hertz", played.hertz());
			json.put("cents", sound.sound().cents().orElseThrow());
			json.put("decibels", played.decibels());
			json.put("width", played.width());
		});
		sound.sound().strength().ifPresent(strength -> json.put("strength", strength));
		json.put("resonances", sound.sound().resonances().stream().map(Resonance::hertz).toList());
		return json;
	}

	private static Map<String, Object> octave(OctaveSound octave) {
		Map<String, Object> json = new LinkedHashMap<>();
		json.put("octave", octave.octave());
		json.put("notes", octave.notes().size());
		json.put("mean", octave.mean());
		json.put("spread", octave.spread());
		json.put("step", octave.step());
		json.put("worst", octave.worst().tone().name());
		return json;
	}

	private static Map<String, Object> effect(HoleEffect effect) {
		Map<String, Object> json = new LinkedHashMap<>();
		json.put("hole", effect.hole());
		json.put("measure", effect.measure().name().toLowerCase(Locale.ROOT));
		json.put("cents", effect.cents());
		return json;
	}

	private static Map<String, Object> leftOut(LeftOutNote note) {
		Map<String, Object> json = new LinkedHashMap<>();
		json.put("name", note.name());
		json.put("why", note.why().words());
		return json;
	}
}
