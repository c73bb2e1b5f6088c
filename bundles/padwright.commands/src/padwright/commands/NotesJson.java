package padwright.commands;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;

import padwright.engine.length.Length;
import padwright.engine.length.LengthUnit;
import padwright.engine.mechanism.Clash;
import padwright.engine.mechanism.HoleState;
import padwright.engine.mechanism.MechanismState;
import padwright.engine.mechanism.TouchFeel;
import padwright.model.Resolved;
import padwright.model.keysystem.Press;
import padwright.model.keysystem.Touch;
import padwright.workup.mechanism.ClashPhrase;
import padwright.workup.mechanism.SystemFingering;
import padwright.workup.mechanism.SystemHole;
import padwright.workup.mechanism.SystemMechanism;

/**
 * The fingerings of a system for programs: places in mm from the upper end of the body, angles in degrees clockwise seen
 * from there, springs in grams, lost motion in mm.
 */
final class NotesJson {

	/** A nanometre is a millionth of a millimetre. */
	private static final int EXACT_MILLIMETRES = 6;

	private final SystemMechanism mechanism;

	private NotesJson(SystemMechanism mechanism) {
		this.mechanism = mechanism;
	}

	static Map<String, Object> of(String system, SystemMechanism mechanism) {
		NotesJson notes = new NotesJson(mechanism);
		Map<String, Object> json = new LinkedHashMap<>();
		json.put("system", system);
		json.put("pads", mechanism.system().pads().size());
		json.put("notes", mechanism.fingerings().stream().map(notes::note).toList());
		json.put("touches", mechanism.mechanism().touches().stream().map(touch -> notes.touch(touch.name())).toList());
		return json;
	}

	private Map<String, Object> note(SystemFingering fingering) {
		MechanismState state = mechanism.state(fingering);
		Map<String, Object> json = new LinkedHashMap<>();
		json.put("note", fingering.note());
		json.put("cents", fingering.cents());
		json.put("label", fingering.label().orElse(""));
		json.put("purpose", fingering.fingering().getPurpose().getLiteral());
		json.put("touches", fingering.fingering().getPresses().stream().filter(press -> !press.isHalf())
				.map(NotesJson::touch).toList());
		json.put("halfTouches", fingering.fingering().getPresses().stream().filter(Press::isHalf)
				.map(NotesJson::touch).toList());
		json.put("missing", fingering.missing());
		json.put("moved", mechanism.moved(state));
		json.put("open", holes(state.holes(HoleState.OPEN)));
		json.put("halfOpen", holes(state.holes(HoleState.HALF)));
		json.put("held", state.held().stream().map(NotesJson::clash).toList());
		json.put("contradictions", state.contradictions().stream().map(NotesJson::clash).toList());
		return json;
	}

	private static String touch(Press press) {
		return Resolved.of(press.getTouch()).map(Touch::getName).orElse("");
	}

	private List<Map<String, Object>> holes(Set<String> names) {
		return mechanism.holes().stream().filter(hole -> names.contains(hole.name())).map(NotesJson::hole).toList();
	}

	private static Map<String, Object> hole(SystemHole hole) {
		Map<String, Object> json = new LinkedHashMap<>();
		json.put("hole", hole.name());
		hole.joint().ifPresent(joint -> json.put("joint", joint));
		hole.at().ifPresent(at -> json.put("at", millimetres(at)));
		json.put("around", hole.around());
		return json;
	}

	private static Map<String, Object> clash(Clash clash) {
		Map<String, Object> json = new LinkedHashMap<>();
		json.put("kind", clash.kind().name().toLowerCase(Locale.ROOT));
		json.put("key", clash.key());
		json.put("because", ClashPhrase.of(clash).words());
		return json;
	}

	private Map<String, Object> touch(String touch) {
		TouchFeel feel = mechanism.feel(touch);
		Map<String, Object> json = new LinkedHashMap<>();
		Map<String, Object> lostMotion = new LinkedHashMap<>();
		feel.lostMotion().forEach((key, lost) -> lostMotion.put(key, millimetres(lost)));
		json.put("touch", touch);
		json.put("grams", feel.force());
		json.put("unweighed", feel.unweighed());
		json.put("lostMotion", lostMotion);
		return json;
	}

	private static Object millimetres(Length length) {
		return length.in(LengthUnit.MILLIMETRE, EXACT_MILLIMETRES);
	}
}
