package padwright.commands;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

import padwright.engine.length.Length;
import padwright.engine.length.LengthUnit;
import padwright.engine.mechanism.HoleState;
import padwright.engine.mechanism.MechanismState;
import padwright.engine.mechanism.TouchFeel;
import padwright.model.Resolved;
import padwright.model.keysystem.Press;
import padwright.model.keysystem.Touch;
import padwright.workup.mechanism.ClashWords;
import padwright.workup.mechanism.SystemFingering;
import padwright.workup.mechanism.SystemMechanism;

/** The fingerings of a system for people. */
final class NotesTable {

	private static final String NONE = "-";
	private static final int DECIMALS = 2;

	private final SystemMechanism mechanism;

	private NotesTable(SystemMechanism mechanism) {
		this.mechanism = mechanism;
	}

	static void print(PrintWriter out, SystemMechanism mechanism) {
		NotesTable table = new NotesTable(mechanism);
		out.println("pads: " + mechanism.system().pads().size() + ", holes: " + mechanism.holes().size()
				+ ", fingerings: " + mechanism.fingerings().size());
		out.println();
		table.printNotes(out);
		out.println();
		table.printTouches(out);
	}

	private void printNotes(PrintWriter out) {
		TextTable rows = new TextTable("note", "for", "touches", "moves", "open", "remark");
		for (SystemFingering fingering : mechanism.fingerings()) {
			MechanismState state = mechanism.state(fingering);
			rows.row(fingering.name(), fingering.fingering().getPurpose().getLiteral(),
					list(fingering.fingering().getPresses().stream().map(NotesTable::press).toList()),
					names(mechanism.moved(state)), list(open(state)), list(remarks(fingering, state), "; "));
		}
		rows.print(out);
	}

	private static String press(Press press) {
		return (press.isHalf() ? "half " : "") + Resolved.of(press.getTouch()).map(Touch::getName).map(NotesTable::word).orElse("?");
	}

	private static List<String> open(MechanismState state) {
		return state.sounding().stream()
				.map(hole -> state.holes().get(hole) == HoleState.HALF ? "half " + word(hole) : word(hole)).toList();
	}

	private static List<String> remarks(SystemFingering fingering, MechanismState state) {
		List<String> remarks = new ArrayList<>();
		fingering.missing().forEach(touch -> remarks.add("the system has no touch " + touch));
		state.contradictions().forEach(clash -> remarks.add("cannot be: " + ClashWords.of(clash)));
		state.held().forEach(clash -> remarks.add("held: " + ClashWords.of(clash)));
		return remarks;
	}

	private void printTouches(PrintWriter out) {
		TextTable rows = new TextTable("touch", "moves after lost motion", "grams", "without spring weight");
		mechanism.mechanism().touches().forEach(touch -> {
			TouchFeel feel = mechanism.feel(touch.name());
			rows.row(touch.name(), list(feel.lostMotion().entrySet().stream().map(NotesTable::moved).toList()),
					feel.force().signum() == 0 ? NONE : feel.force().stripTrailingZeros().toPlainString(),
					names(feel.unweighed()));
		});
		rows.print(out);
	}

	private static String moved(Map.Entry<String, Length> key) {
		Length lost = key.getValue();
		return lost.signum() == 0 ? word(key.getKey())
				: word(key.getKey()) + " (" + lost.in(LengthUnit.MILLIMETRE, DECIMALS).toPlainString() + " mm)";
	}

	/** A name with blanks stands in quotation marks, as it is written in the system. */
	private static String word(String name) {
		return name.contains(" ") ? '"' + name + '"' : name;
	}

	private static String names(Collection<String> names) {
		return list(names.stream().map(NotesTable::word).toList());
	}

	private static String list(Collection<String> words) {
		return list(words, " ");
	}

	private static String list(Collection<String> words, String between) {
		return words.isEmpty() ? NONE : words.stream().collect(Collectors.joining(between));
	}
}
